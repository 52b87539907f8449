import type { NaturalArch, NaturalDots } from "../proportions/index.js";
import { DOTS } from "../landmarks/index.js";
import { DOT_NAMES } from "../landmarks/internal.js";
import { dot } from "./choices.js";
import { flatPoint, line, measuredLength, point, size } from "./quantity.js";
import { each, kinds, list, record, type Schema, word } from "./schema.js";

type Crest = Exclude<NaturalArch, { kind: "flat" }>;
const rise = measuredLength<"mm">();

const crest = record<Crest>({
  kind: word<Crest["kind"]>({ peak: true, undetermined: true }),
  at: flatPoint<"mm">(),
  u: size<"mm">(),
  rise,
});

const { upperStart, tailEnd, ...others } = each(DOTS, point<"mm">());

/** The dots that a brow shows before anything is planned. */
export const naturalDots: Schema<NaturalDots> = record<NaturalDots>({
  dots: record<NaturalDots["dots"]>({ upperStart, tailEnd }, others),
  startLine: line<"mm">(),
  arch: kinds<NaturalArch>({
    peak: crest,
    undetermined: crest,
    flat: record<Extract<NaturalArch, { kind: "flat" }>>(
      { kind: word({ flat: true }), rise },
      { farthest: flatPoint<"mm">() },
    ),
  }),
  extended: list(dot, DOT_NAMES.length),
});
