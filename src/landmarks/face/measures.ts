import { keysOf } from "../../units/internal.js";
import type { Sides, Tolerance, ToleranceName, ToleranceSet } from "../../units/index.js";

/** What is true of everything of one kind that is read. */
export interface KindOfMeasure {
  /** Which tolerance of a set limits it; undefined where none does. */
  readonly tolerance: ToleranceName | undefined;
  /** Printed behind a figure; empty for a share. */
  readonly unit: "mm" | "mm²" | "degrees" | "";
  /** As many as a figure is printed with. */
  readonly decimals: number;
}

/** Which tolerance of a set limits what is read of a kind; undefined where none does. */
const LIMITED_BY = {
  length: "position",
  gap: "position",
  distance: "position",
  height: "position",
  thickness: "thickness",
  share: "frontShare",
  slope: undefined,
  area: undefined,
} as const;

/** Kind of something that is read. */
export type MeasureKind = keyof typeof LIMITED_BY;

/** Kinds of what is read: the tolerance that limits them, their unit, and decimals. */
export const MEASURE_KINDS: Readonly<Record<MeasureKind, KindOfMeasure>> =
  /* @__PURE__ */ kindsOfMeasures();

function kindsOfMeasures(): Readonly<Record<MeasureKind, KindOfMeasure>> {
  const inMm = { unit: "mm", decimals: 1 } as const;
  return {
    length: { tolerance: LIMITED_BY.length, ...inMm },
    gap: { tolerance: LIMITED_BY.gap, ...inMm },
    distance: { tolerance: LIMITED_BY.distance, ...inMm },
    height: { tolerance: LIMITED_BY.height, ...inMm },
    thickness: { tolerance: LIMITED_BY.thickness, ...inMm },
    share: { tolerance: LIMITED_BY.share, unit: "", decimals: 2 },
    slope: { tolerance: LIMITED_BY.slope, unit: "degrees", decimals: 1 },
    area: { tolerance: LIMITED_BY.area, unit: "mm²", decimals: 0 },
  };
}

/** What is said of one measure. */
interface Measure {
  readonly kind: MeasureKind;
  /** `"dots"` of one brow, its `"borders"` where joined dots read otherwise, or both `"brows"`. */
  readonly on: "dots" | "borders" | "brows";
  /** Whether a ruler, a tape or a caliper reads it. */
  readonly byHand: boolean;
}

// Apart from what else is said of measures, which plans and schemas need not carry along.
/** The kind of everything that is read on a face, in the order in which it is reported. */
const KIND_OF = {
  front: "length",
  tail: "length",
  frontAlong: "length",
  tailAlong: "length",
  frontOnPhoto: "length",
  tailOnPhoto: "length",
  frontShare: "share",
  startDistance: "distance",
  archDistance: "distance",
  tailDistance: "distance",
  startHeight: "height",
  archHeight: "height",
  tailHeight: "height",
  startThickness: "thickness",
  bodyThickness: "thickness",
  archThickness: "thickness",
  exocanthionToTailEnd: "length",
  lidToBrow: "gap",
  frontInclination: "slope",
  browInclination: "slope",
  area: "area",
  startToStart: "gap",
} as const;

/** What neither a ruler nor a tape nor a caliper reads. */
const NOT_BY_HAND = [
  "frontOnPhoto",
  "tailOnPhoto",
  "frontShare",
  "frontInclination",
  "browInclination",
  "area",
] as const satisfies readonly FaceMeasureName[];

/**
 * Everything that is read on a face, in the order in which it is reported: its kind, what it is read on,
 * and whether it can be read by hand. What measures are called stands in the catalogue.
 */
export const MEASURES = {
  /** Upper start dot – arch dot, by ruler on the skin. */
  front: { kind: "length", on: "dots", byHand: true },
  /** Arch dot – tail end, by ruler on the skin. */
  tail: { kind: "length", on: "dots", byHand: true },
  /** Upper start dot – arch dot by tape: along the upper border, on the skin. */
  frontAlong: { kind: "length", on: "borders", byHand: true },
  /** Arch dot – tail end by tape: along the upper border, on the skin. */
  tailAlong: { kind: "length", on: "borders", byHand: true },
  /** Upper start dot – arch dot, straight, as a frontal photo shows it. */
  frontOnPhoto: { kind: "length", on: "dots", byHand: false },
  /** Arch dot – tail end, straight, as a frontal photo shows it. */
  tailOnPhoto: { kind: "length", on: "dots", byHand: false },
  /** Front over front and tail together, by ruler; a share of 0…1. */
  frontShare: { kind: "share", on: "dots", byHand: false },
  /** Midline – upper start dot. */
  startDistance: { kind: "distance", on: "dots", byHand: true },
  /** Midline – upper arch dot. */
  archDistance: { kind: "distance", on: "dots", byHand: true },
  /** Midline – tail end. */
  tailDistance: { kind: "distance", on: "dots", byHand: true },
  /** Level of the inner eye corners – upper start dot; negative below it. */
  startHeight: { kind: "height", on: "dots", byHand: true },
  /** Level of the inner eye corners – upper arch dot; negative below it. */
  archHeight: { kind: "height", on: "dots", byHand: true },
  /** Level of the inner eye corners – tail end; negative below it. */
  tailHeight: { kind: "height", on: "dots", byHand: true },
  /** Upper – lower border at the start, vertically. */
  startThickness: { kind: "thickness", on: "dots", byHand: true },
  /** Upper – lower border half-way between start and arch, vertically. */
  bodyThickness: { kind: "thickness", on: "dots", byHand: true },
  /** Upper – lower border at the arch, vertically. */
  archThickness: { kind: "thickness", on: "dots", byHand: true },
  /** Outer eye corner – tail end, by ruler on the skin. */
  exocanthionToTailEnd: {
    kind: "length",
    on: "dots",
    byHand: true,
  },
  /** Margin of the upper lid – lower border, vertically at the pupil. */
  lidToBrow: { kind: "gap", on: "borders", byHand: true },
  /** Chord from upper start dot to arch dot against the face's horizontal, positive where it rises. */
  frontInclination: { kind: "slope", on: "dots", byHand: false },
  /** Chord from upper start dot to tail end against the face's horizontal, positive where it rises. */
  browInclination: { kind: "slope", on: "dots", byHand: false },
  /** Area between the borders, in the frontal view. */
  area: { kind: "area", on: "borders", byHand: false },
  /** Upper start dot – upper start dot of the other brow, by ruler on the skin. */
  startToStart: { kind: "gap", on: "brows", byHand: true },
} as const;

/** Name of something read on one side, or between both. */
export type FaceMeasureName = keyof typeof KIND_OF;

/** Name of something read on one side. */
export type MeasureName = {
  [Name in FaceMeasureName]: (typeof MEASURES)[Name]["on"] extends "brows" ? never : Name;
}[FaceMeasureName];

/** What an artist can read with a ruler, a tape or a caliper on one side of the face. */
export type ReadableMeasure = {
  [Name in MeasureName]: (typeof MEASURES)[Name]["byHand"] extends true ? Name : never;
}[MeasureName];

/**
 * What is read on one side, each entry where it is known.
 *
 * Lengths are millimetres. `Value` is a plain number where uncertainty is left out, and a
 * `Measured` where it is known; readings taken by hand have the same names.
 */
export type SideMeasures<Value> = {
  readonly [Name in FaceMeasureName as Name extends MeasureName ? Name : never]?: Value;
};

// The one measure between both brows is read by its name: loops over a list of one, in a dozen places, would
// cost more than they give until there is a second.
/** What is read on both sides, and between them. */
export interface FaceMeasures<Value> extends Sides<SideMeasures<Value>> {
  /** Distance between the two upper start dots, by ruler. */
  readonly startToStart?: Value;
}

/** Holds the table to what has to be said of a measure. */
const ROWS: {
  readonly [Name in FaceMeasureName]: Measure & {
    readonly kind: (typeof KIND_OF)[Name];
    readonly byHand: Name extends (typeof NOT_BY_HAND)[number] ? false : true;
  };
} = MEASURES;

/** Kind of a measure. */
export function measureKindOf(measure: FaceMeasureName): MeasureKind {
  return KIND_OF[measure];
}

/** What is true of a measure as one of its kind. */
export function kindOf(measure: FaceMeasureName): KindOfMeasure {
  return MEASURE_KINDS[KIND_OF[measure]];
}

/** The name of the tolerance that limits a measure; undefined where none does. */
export function toleranceNameOf(measure: FaceMeasureName): ToleranceName | undefined {
  return LIMITED_BY[KIND_OF[measure]];
}

/** Everything that is read on a face, in the order in which it is reported. */
export const FACE_MEASURE_NAMES: readonly FaceMeasureName[] = /* @__PURE__ */ keysOf(KIND_OF);

/** Everything that is read on one side, in the order in which it is reported. */
export const MEASURE_NAMES: readonly MeasureName[] =
  /* @__PURE__ */ FACE_MEASURE_NAMES.filter(isOnSide);

/** What can be read by hand on one side. */
export const READABLE_MEASURES: readonly ReadableMeasure[] =
  /* @__PURE__ */ MEASURE_NAMES.filter(isReadable);

/** What is read on the borders of one brow, from dot to dot. */
export const MEASURES_ON_BORDERS: readonly MeasureName[] = /* @__PURE__ */ MEASURE_NAMES.filter(
  (name) => ROWS[name].on === "borders",
);

function isOnSide(name: FaceMeasureName): name is MeasureName {
  return name !== "startToStart";
}

function isReadable(name: MeasureName): name is ReadableMeasure {
  return !(NOT_BY_HAND as readonly FaceMeasureName[]).includes(name);
}

/** How much of something of one kind, without its sign, to the decimals of that kind. */
export function amountOf({ decimals }: KindOfMeasure, value: number): number {
  return Number(Math.abs(value).toFixed(decimals));
}

/**
 * What a measure may differ by under a tolerance set; undefined where the set says nothing of its kind,
 * and nothing is decided about it then.
 *
 * @example
 * ```ts
 * import { toleranceFor } from "brow-geometry/landmarks";
 * import { WORKING_TOLERANCES } from "brow-geometry";
 * toleranceFor("archThickness", WORKING_TOLERANCES)?.limits; // → { lower: -0.5, upper: 0.5 }
 * toleranceFor("area", WORKING_TOLERANCES); // → undefined
 * ```
 */
export function toleranceFor(measure: FaceMeasureName, set: ToleranceSet): Tolerance | undefined {
  const tolerance = toleranceNameOf(measure);
  return tolerance === undefined ? undefined : set.tolerances[tolerance];
}
