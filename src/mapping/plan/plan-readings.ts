import {
  type FaceMeasures,
  landmarkUncertainty,
  type MeasureName,
  type SideMeasures,
  type Skin,
} from "../../landmarks/index.js";
import {
  measureFace,
  naturalDots,
  outline,
  type Outline,
  type OutlineDots,
  type OutlineOptions,
} from "../../proportions/index.js";
import { eachSide, GeometryError, measured, type Measured } from "../../units/index.js";
import { keysOf } from "../../units/internal.js";
import type { SettledChoices } from "../dots/planned-dots.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import { solveDots } from "../dots/solve-dots.js";

/** What is read on one map, side by side: measures, and the left ones less the right ones. */
export interface SideReadings<Value> {
  readonly measures: FaceMeasures<Value>;
  readonly differences: SideMeasures<Value>;
}

/** Readings of one map or several, by name. */
type NamedReadings<Name extends string, Value> = { readonly [Each in Name]: SideReadings<Value> };

/** What is read on the natural brows of a face and on those planned for it. */
export type PlanReadings<Value> = NamedReadings<"natural" | "planned", Value>;

/** Reads the natural and the planned brows of a face, the choices being settled. */
export function readPlan(
  face: PlannableFace,
  skin: Skin,
  choices: SettledChoices,
): PlanReadings<number> {
  const u = landmarkUncertainty(face, "brow");
  const natural = eachSide((side) => naturalDots(face[side].brow, { u }));
  const { dots } = solveDots(face, natural, skin, choices);
  const grown = eachSide((side) => natural[side].dots);
  const hair = eachSide((side) => face[side].brow);
  const drawn = eachSide((side) => outlineIfAny(dots[side], choices.shape));
  return {
    natural: withDifferences(measureFace(grown, face, skin, hair)),
    planned: withDifferences(measureFace(dots, face, skin, drawn)),
  };
}

/** Measures with how the left ones differ from the right ones. */
export function withDifferences(measures: FaceMeasures<number>): SideReadings<number> {
  const differences: { [Name in MeasureName]?: number } = {};
  for (const name of keysOf(measures.right)) {
    const right = measures.right[name];
    const left = measures.left[name];
    if (right !== undefined && left !== undefined) differences[name] = left - right;
  }
  return { measures, differences };
}

/** Uncertainties of readings, each by the path of its reading. */
export type ReadingsRow = Readonly<Record<string, number>>;

/** Readings with the uncertainties of their paths. */
export function withUncertainties<Name extends string>(
  readings: NamedReadings<Name, number>,
  uncertainties: ReadingsRow,
): NamedReadings<Name, Measured> {
  return mapReadings(readings, (value, path) => ({ value, u: uncertainties[path] ?? 0 }));
}

/** Readings as if they were known exactly: what a plan asks for, and what all choices have in common. */
export function exactly(measures: FaceMeasures<number | Measured>): FaceMeasures<Measured> {
  const valueOf = (of: number | Measured): number => (typeof of === "number" ? of : of.value);
  const readings = { measures, differences: {} };
  return mapSideReadings(readings, (of) => measured<number>(valueOf(of), 0)).measures;
}

function mapReadings<Name extends string, Value, Mapped>(
  readings: NamedReadings<Name, Value>,
  map: (value: Value, path: string) => Mapped,
): NamedReadings<Name, Mapped> {
  const mapped: Partial<Record<Name, SideReadings<Mapped>>> = {};
  for (const name of keysOf(readings)) {
    mapped[name] = mapSideReadings(readings[name], (value, path) => map(value, `${name}.${path}`));
  }
  return mapped as NamedReadings<Name, Mapped>;
}

/** Maps every reading of one map; `path` is its place within it. */
function mapSideReadings<Value, Mapped>(
  { measures, differences }: SideReadings<Value>,
  map: (value: Value, path: string) => Mapped,
): SideReadings<Mapped> {
  const overMeasures = (of: SideMeasures<Value>, path: string): SideMeasures<Mapped> => {
    const mapped: { [Name in MeasureName]?: Mapped } = {};
    for (const name of keysOf(of)) {
      const value = of[name];
      if (value !== undefined) mapped[name] = map(value, `${path}.${name}`);
    }
    return mapped;
  };
  const { right, left, startToStart } = measures;
  return {
    measures: {
      right: overMeasures(right, "right"),
      left: overMeasures(left, "left"),
      ...(startToStart === undefined ? {} : { startToStart: map(startToStart, "startToStart") }),
    },
    differences: overMeasures(differences, "difference"),
  };
}

/** The outline, or nothing where none runs through the dots, as drawn by hand or moved by their uncertainty. */
export function outlineIfAny(dots: OutlineDots, shape: OutlineOptions): Outline<"mm"> | undefined {
  try {
    return outline(dots, shape);
  } catch (error) {
    if (error instanceof GeometryError && error.code === "inconsistent") return undefined;
    throw error;
  }
}
