import type { FittedSkin, Skin, SkinCurve } from "../landmarks/index.js";
import { length, size, spread } from "./quantity.js";
import { finite, kinds, record, type Schema, word } from "./schema.js";

const skinCurve = record<SkinCurve>({ second: finite, fourth: finite });

/** The skin on which a ruler lies. */
export const skin: Schema<Skin> = kinds<Skin>({
  flat: record<Extract<Skin, { kind: "flat" }>>({ kind: word({ flat: true }) }),
  modelled: record<Extract<Skin, { kind: "modelled" }>>({
    kind: word({ modelled: true }),
    width: size<"mm">(),
    relativeU: spread,
  }),
  fitted: record<FittedSkin>({
    kind: word({ fitted: true }),
    atMidline: length<"mm">(),
    slope: finite,
    right: skinCurve,
    left: skinCurve,
    relativeU: spread,
  }),
});
