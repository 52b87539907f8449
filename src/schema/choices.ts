import {
  ARCH_CONVENTIONS,
  type ArchConvention,
  type Declared,
  type Dot,
  type GuideConvention,
  GUIDES,
  START_CONVENTIONS,
  type StartConvention,
  type TailConvention,
} from "../landmarks/index.js";
import { DOT_NAMES, TAIL_CONVENTIONS } from "../landmarks/internal.js";
import {
  CARRIES,
  type Carry,
  type Choices,
  type Lead,
  LEADS,
  LEVELS,
  type Pin,
  TAIL_HEIGHTS,
  type TailHeight,
} from "../mapping/index.js";
import { CHOSEN_SHARES } from "../mapping/internal.js";
import { type OutlineOptions, type StationThickness } from "../proportions/index.js";
import { SHAPES, STATIONS } from "../proportions/internal.js";
import { type Side } from "../units/index.js";
import { DECISION_RULES, keysOf, SIDES } from "../units/internal.js";
import { toleranceSet } from "./tolerance-set.js";
import { parse } from "./parse.js";
import type { Length } from "../units/index.js";
import { point, positiveLength, size, words } from "./quantity.js";
import { each, flag, list, record, type Schema, within, word } from "./schema.js";

const MOST_PINS = 2 * DOT_NAMES.length;

export const side: Schema<Side> = word(SIDES);
export const dot: Schema<Dot> = word(DOT_NAMES);
export const guideConvention: Schema<GuideConvention> = word(keysOf(GUIDES));
export const startConvention: Schema<StartConvention> = word(START_CONVENTIONS);
export const archConvention: Schema<ArchConvention> = word(ARCH_CONVENTIONS);
export const tailConvention: Schema<TailConvention> = word(TAIL_CONVENTIONS);
export const lead: Schema<Lead> = word(keysOf(LEADS));
export const carry: Schema<Carry> = word(keysOf(CARRIES));
export const tailHeight: Schema<TailHeight> = word(keysOf(TAIL_HEIGHTS));

export const thickness: Schema<StationThickness> = record<StationThickness>(
  each(keysOf(STATIONS), positiveLength),
);

export const shape: Schema<OutlineOptions> = record<OutlineOptions>(
  {},
  {
    angularity: within(0, SHAPES.angularity),
    startSlope: within(0, SHAPES.startSlope),
    tailSlope: within(0, SHAPES.tailSlope),
    frontRoundness: within(0, SHAPES.frontRoundness),
    softFront: within(0, SHAPES.softFront) as unknown as Schema<Length<"mm">>,
  },
);

export const pin: Schema<Pin> = record<Pin>(
  { side, dot, at: point<"mm">() },
  { by: words, reason: words },
);

export const pins: Schema<readonly Pin[]> = list(pin, MOST_PINS);

/** What an artist has chosen for a plan. */
export const choicesSchema: Schema<Choices> = record<Choices>(
  {},
  {
    lead,
    carry,
    levels: word(LEVELS),
    levelLimit: positiveLength,
    start: startConvention,
    arch: archConvention,
    tail: tailConvention,
    keepHair: size,
    eyeWidthShare: within(...CHOSEN_SHARES.eyeWidthShare),
    frontShare: within(...CHOSEN_SHARES.frontShare),
    tailHeight,
    thickness,
    shape,
    noseBent: flag,
    pins,
    rule: word(DECISION_RULES),
    tolerances: toleranceSet,
    declared: record<Declared>({}, { upright: flag, relaxed: flag }),
  },
);

/**
 * Reads an artist's choices from outside, such as parsed JSON.
 *
 * @throws GeometryError `not-parsed`, naming the path, what stood there and what is needed
 *
 * @example
 * ```ts
 * import { parseChoices } from "brow-geometry/schema";
 * parseChoices({ lead: "left", noseBent: true }); // → { lead: "left", noseBent: true }
 * parseChoices({ lead: "top" }); // throws GeometryError: lead is "top"; needs one of right, left, middle
 * ```
 */
export function parseChoices(json: unknown): Choices {
  return parse("parseChoices", "choices", choicesSchema, json);
}
