import { ARCH_CONVENTIONS, START_CONVENTIONS } from "../../proportions/index.js";
import {
  GeometryError,
  requireObject,
  requirePositive,
  requireWithin,
  requireWord,
} from "../../units/index.js";
import { type Choices, LEADS, TAIL_HEIGHTS } from "./choices.js";
import { requireUsablePins } from "./pins.js";

/** Refuses choices out of their range, or that contradict each other, by name: as their schema does. */
export function requireChoices(where: string, choices: Choices): void {
  const { levelLimit, thickness, pins = [] } = choices;
  const words = [
    ["lead", LEADS],
    ["carry", ["mirror", "measure"]],
    ["levels", [...LEADS, "higher"]],
    ["start", START_CONVENTIONS],
    ["arch", ARCH_CONVENTIONS],
    ["tailHeight", TAIL_HEIGHTS],
    ["rule", ["guarded", "simple"]],
  ] as const;
  for (const [field, known] of words) requireWord(where, field, choices[field], known);
  for (const [field, least, most] of SHARES)
    requireShare(where, field, choices[field], least, most);
  for (const [field, most] of SHAPES) {
    requireShare(where, `shape.${field}`, choices.shape?.[field], 0, most);
  }
  if (thickness !== undefined) {
    for (const station of ["start", "body", "arch"] as const) {
      requirePositive(where, `thickness.${station}`, thickness[station]);
    }
  }
  requireFlag(where, "noseBent", choices.noseBent);
  requireFlag(where, "declared.upright", choices.declared?.upright);
  requireFlag(where, "declared.relaxed", choices.declared?.relaxed);
  if (choices.tolerances !== undefined) {
    const named = choices.tolerances.tolerances;
    requireObject(where, "tolerances.tolerances", named, "limits by name, as in a tolerance set");
  }
  if (levelLimit !== undefined) requirePositive(where, "levelLimit", levelLimit);
  if (choices.carry === "measure") requireCarriable(where, choices);
  requireUsablePins(where, pins);
}

const SHARES = [
  ["frontShare", 0.4, 0.9],
  ["eyeWidthShare", 0.4, 1.4],
] as const;

const SHAPES = [
  ["angularity", 1],
  ["startSlope", 3],
  ["tailSlope", 3],
  ["frontRoundness", 1],
] as const;

function requireShare(
  where: string,
  field: string,
  value: number | undefined,
  least: number,
  most: number,
): void {
  if (value !== undefined) requireWithin(where, field, value, least, most);
}

function requireFlag(where: string, field: string, value: unknown): void {
  if (value === undefined || typeof value === "boolean") return;
  throw new GeometryError("not-parsed", { where, field, value, need: "true or false" });
}

function requireCarriable(where: string, { lead, levelLimit }: Choices): void {
  if (lead === undefined || lead === "middle") {
    const need = "right or left: a brow is carried by measure from the one that leads";
    throw new GeometryError("inconsistent", { where, field: "lead", value: lead, need });
  }
  if (levelLimit !== undefined) {
    const need = "a brow that is mirrored: one carried by measure takes the leading heights";
    throw new GeometryError("inconsistent", {
      where,
      field: "levelLimit",
      value: levelLimit,
      need,
    });
  }
}
