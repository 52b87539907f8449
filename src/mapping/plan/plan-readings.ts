import {
  type FaceMeasures,
  landmarkUncertainty,
  type MeasureName,
  type SideMeasures,
  type Skin,
} from "../../landmarks/index.js";
import { measureFace, naturalDots } from "../../proportions/index.js";
import { eachSide, type Measured } from "../../units/index.js";
import { outlineIfAny } from "./outline-if-any.js";
import type { SettledChoices } from "../dots/planned-dots.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import { solveDots } from "../dots/solve-dots.js";

/** What is read on one map, side by side: measures, and the left ones less the right ones. */
export interface SideReadings<Value> {
  readonly measures: FaceMeasures<Value>;
  readonly differences: SideMeasures<Value>;
}

/** What is read on the natural brows of a face and on those planned for it. */
export interface PlanReadings<Value> {
  readonly natural: SideReadings<Value>;
  readonly planned: SideReadings<Value>;
}

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
  for (const name of Object.keys(measures.right) as MeasureName[]) {
    const right = measures.right[name];
    const left = measures.left[name];
    if (right !== undefined && left !== undefined) differences[name] = left - right;
  }
  return { measures, differences };
}

/** Readings laid out in one row of named numbers. */
export type ReadingsRow = Readonly<Record<string, number>>;

/** Lays readings out in one row, as an uncertainty calculation takes them. */
export function rowOf(readings: PlanReadings<number>): ReadingsRow {
  const row: Record<string, number> = {};
  mapReadings(readings, (value, path) => {
    row[path] = value;
    return value;
  });
  return row;
}

/** Readings with the uncertainties that stand at their places in a row. */
export function withUncertainties(
  readings: PlanReadings<number>,
  uncertainties: ReadingsRow,
): PlanReadings<Measured> {
  return mapReadings(readings, (value, path) => ({ value, u: uncertainties[path] ?? 0 }));
}

function mapReadings<Value, Mapped>(
  { natural, planned }: PlanReadings<Value>,
  map: (value: Value, path: string) => Mapped,
): PlanReadings<Mapped> {
  return {
    natural: mapSideReadings(natural, (value, path) => map(value, `natural.${path}`)),
    planned: mapSideReadings(planned, (value, path) => map(value, `planned.${path}`)),
  };
}

/** Maps every reading of one map; `path` is its place within it. */
export function mapSideReadings<Value, Mapped>(
  { measures, differences }: SideReadings<Value>,
  map: (value: Value, path: string) => Mapped,
): SideReadings<Mapped> {
  const overMeasures = (of: SideMeasures<Value>, path: string): SideMeasures<Mapped> => {
    const mapped: { [Name in MeasureName]?: Mapped } = {};
    for (const name of Object.keys(of) as MeasureName[]) {
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
