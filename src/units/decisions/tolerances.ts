import { type Decision, type DecisionOptions, decisionOn, type Limits } from "./decision.js";
import type { Measured } from "../uncertainty/measured.js";

/**
 * What a tolerance is about, with the unit of its limits. Every one limits a difference: between the
 * sides, or, for the front share, also from the share that was aimed at. `position` is about heights,
 * distances and lengths; `eyeCant` about the line through the pupils against the horizontal of the face;
 * `noseDeviation` about the line of the nose against the midline.
 */
export const TOLERANCE_UNITS = {
  position: "mm",
  thickness: "mm",
  frontShare: "share",
  eyeCant: "degrees",
  noseDeviation: "degrees",
} as const;

/** What a tolerance is about. */
export type ToleranceName = keyof typeof TOLERANCE_UNITS;

/** Limits and where they come from. */
export interface Tolerance {
  readonly limits: Limits;
  /** `"ours"`: a default that this library chose; `"published"`: read in the source named. */
  readonly status: "ours" | "published";
  readonly source: string;
}

/**
 * Tolerances that belong together; plain data that an app may replace by its own. Nothing is decided about
 * what a set leaves out: no other set steps in for it.
 */
export interface ToleranceSet {
  readonly name: string;
  readonly tolerances: { readonly [Name in ToleranceName]?: Tolerance };
}

/** A tolerance set that has at least the named tolerances. */
export type ToleranceSetWith<Name extends ToleranceName> = ToleranceSet & {
  readonly tolerances: { readonly [Each in Name]: Tolerance };
};

/** What two brows may differ by before one is corrected: defaults of this library. */
export const WORKING_TOLERANCES: ToleranceSetWith<"position" | "thickness" | "frontShare"> = {
  name: "working",
  tolerances: {
    position: /* @__PURE__ */ ours(1),
    thickness: /* @__PURE__ */ ours(0.5),
    frontShare: /* @__PURE__ */ ours(0.03),
  },
};

// Apart from the sets, which name the sources, so that plans need not carry these along.
/** From where on clients notice a difference, in mm. */
export const CLIENTS_NOTICE = 2;
/** From where on others notice a difference, in mm. */
export const OTHERS_NOTICE = 3.5;
/** From where on others notice that the eyes slant, in degrees. */
export const NOTICED_CANT = 2.31;
/** From where on others notice that the nose deviates, in degrees. */
export const NOTICED_DEVIATION = 2.92;

/** Differences that clients themselves notice. */
export const NOTICED_BY_CLIENTS: ToleranceSetWith<"position"> = {
  name: "noticed by clients",
  tolerances: {
    position: /* @__PURE__ */ published(
      CLIENTS_NOTICE,
      "Tiryaki & Ciloglu, Aesthet Surg J 2007;27:513–517",
    ),
  },
};

/** Differences that other people notice. */
export const NOTICED_BY_OTHERS: ToleranceSetWith<"position" | "eyeCant" | "noseDeviation"> = {
  name: "noticed by others",
  tolerances: {
    position: /* @__PURE__ */ published(
      OTHERS_NOTICE,
      "systematic review, Aesthet Surg J 2017;37:375–385",
    ),
    eyeCant: /* @__PURE__ */ published(
      NOTICED_CANT,
      "160 raters, J Oral Maxillofac Surg 2015;73:1606–1614",
    ),
    noseDeviation: /* @__PURE__ */ published(
      NOTICED_DEVIATION,
      "160 raters, J Oral Maxillofac Surg 2015;73:1606–1614",
    ),
  },
};

function ours(halfWidth: number): Tolerance {
  return { limits: within(halfWidth), status: "ours", source: "default of brow-geometry" };
}

function published(halfWidth: number, source: string): Tolerance {
  return { limits: within(halfWidth), status: "published", source };
}

/** Limits as far below 0 as above. */
export function within(halfWidth: number): Limits {
  return { lower: -halfWidth, upper: halfWidth };
}

/**
 * The decision of a tolerance set on a value, in an object to be spread: none where the set says nothing
 * of it. The limits are those of a difference from `aim`, 0 where the value is a difference itself.
 *
 * @param decide `decide` where whoever reads it is to learn what would settle it
 */
export function decideUnder(
  { tolerances }: ToleranceSet,
  name: ToleranceName | undefined,
  value: Measured,
  options: DecisionOptions = {},
  aim = 0,
  decide: typeof decisionOn = decisionOn,
): { readonly decision?: Decision } {
  const tolerance = name === undefined ? undefined : tolerances[name];
  if (tolerance === undefined) return {};
  return { decision: decide(value, about(aim, tolerance.limits), options) };
}

function about(aim: number, limits: Limits): Limits {
  const { lower, upper } = limits;
  if (aim === 0) return limits;
  return {
    ...(lower === undefined ? {} : { lower: aim + lower }),
    ...(upper === undefined ? {} : { upper: aim + upper }),
  };
}
