import * as z from "zod/mini";
import type { Length, Measured } from "../units/index.js";
import type { CompleteDots } from "../landmarks/index.js";
import { DOT_NAMES, MARKS, SIDE_LANDMARKS } from "../landmarks/internal.js";
import {
  type BrowPlan,
  type Caution,
  type DotOrigin,
  MAP_VERSION,
  type Move,
  type SettledChoices,
} from "../mapping/index.js";
import { CAUTION_CODES, ORIGINS, REASON_CODES, SHAPE_CODES } from "../mapping/internal.js";
import type { Guide, NaturalArch, NaturalDots } from "../proportions/index.js";
import {
  archConvention,
  carry,
  dot,
  guideConvention,
  lead,
  pin,
  pins,
  shape,
  side,
  startConvention,
  tailConvention,
  tailHeight,
  thickness,
} from "./choices.js";
import { decision } from "./decision.js";
import { plannableFace, standIns } from "./face.js";
import { faceFrame, skin } from "./frame.js";
import { faceMeasures, sideComparison } from "./measures.js";
import {
  anyNote,
  flatPoint,
  length,
  line,
  measured,
  MOST_NOTES,
  notes,
  noteValues,
  point,
  positiveLength,
  reading,
  sides,
  size,
  words,
} from "./quantity.js";
import { each, finite, kinds, list, record, type Schema, word } from "./schema.js";
import { PLAN_STEPS, parseVersioned } from "./versions.js";

/** A plan draws three a side. */
const MOST_GUIDES = 20;
const MOST_DOTS = DOT_NAMES.length;

const settledChoices = record<SettledChoices>(
  {
    lead,
    carry,
    levels: lead,
    start: startConvention,
    arch: archConvention,
    tail: tailConvention,
    eyeWidthShare: finite,
    frontShare: finite,
    tailHeight,
    thickness,
    shape,
    pins,
  },
  { levelLimit: positiveLength, keepHair: size },
);

const guide = record<Guide>({
  mark: word(MARKS),
  convention: guideConvention,
  side,
  line: line<"mm">(),
  from: list(word(SIDE_LANDMARKS), SIDE_LANDMARKS.length),
  standIns,
});

const origin = record<DotOrigin>(
  {
    from: word(ORIGINS),
  },
  { pin },
);

/** Plans of version 1 hold the sentence of a move, too. */
const sentence = { text: words };
const by = reading as unknown as Schema<Measured<Length<"mm">>>;
const moved = [
  { side, dot, up: by },
  { outward: by, ...sentence },
] as const;

const move = kinds<Move & { readonly text?: string }>({
  move: moved,
  stay: moved,
  place: [{ side, dot, distance: length, height: length }, sentence],
}) as unknown as Schema<Move>;

const caution = record<Caution>(
  { code: word([...CAUTION_CODES, ...SHAPE_CODES]), values: noteValues },
  { text: words, finding: anyNote, at: flatPoint<"mm">() },
);

const rise = measured as unknown as Schema<Measured<Length<"mm">>>;
const crest = { at: flatPoint<"mm">(), u: size, rise };

const { upperStart, tailEnd, ...others } = each(DOT_NAMES, point<"mm">());

/** The dots that a brow shows before anything is planned. */
const naturalDots: Schema<NaturalDots> = record<NaturalDots>({
  dots: record<NaturalDots["dots"]>({ upperStart, tailEnd }, others),
  startLine: line<"mm">(),
  arch: kinds<NaturalArch>({
    peak: [crest],
    undetermined: [crest],
    flat: [{ rise }, { farthest: flatPoint<"mm">() }],
  }),
  extended: list(dot, DOT_NAMES.length),
});

export const mapVersion: Schema<typeof MAP_VERSION> = z.literal(MAP_VERSION, `${MAP_VERSION}`);

/** A map of both brows, as `planBrows` answers it. */
export const planSchema: Schema<BrowPlan> = record<BrowPlan>(
  {
    face: plannableFace,
    skin,
    choices: settledChoices,
    reasons: notes(REASON_CODES),
    natural: sides(naturalDots),
    guides: sides(list(guide, MOST_GUIDES)),
    dots: sides(record<CompleteDots<"mm">>(each(DOT_NAMES, point<"mm">()))),
    origins: sides(record<BrowPlan["origins"]["right"]>(each(DOT_NAMES, origin))),
    measures: faceMeasures,
    comparison: sideComparison,
    naturalMeasures: faceMeasures,
    naturalComparison: sideComparison,
    moves: list(move, 2 * MOST_DOTS),
    cautions: list(caution, MOST_NOTES),
    version: mapVersion,
  },
  { frame: faceFrame, shareDecisions: sides(decision) },
);

/**
 * Reads a plan back that was written to JSON; what is read equals what was written. Versions are dealt with as
 * by {@link parseRecord}.
 *
 * @throws GeometryError `not-parsed`, naming the path, what stood there and what is needed
 *
 * @example
 * ```ts
 * import { parsePlan } from "brow-geometry/schema";
 * parsePlan({ dots: {} }); // throws GeometryError: face is missing; needs an object with right, left, midline
 * ```
 */
export function parsePlan(json: unknown): BrowPlan {
  return parseVersioned("parsePlan", "plan", planSchema, PLAN_STEPS, json, 1);
}
