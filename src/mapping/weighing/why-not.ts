import { DOTS } from "../../landmarks/index.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import { SHAPES } from "../../proportions/internal.js";
import type { GeometryError, Note } from "../../units/index.js";
import { shownValue } from "../../units/internal.js";
import { CHOSEN_SHARES } from "../choices/choice-tables.js";
import { fieldNote } from "./field-note.js";
import { type ObstacleNotes, type WeighingNotes, weighingNote } from "./notes.js";

/** What stands in the way of a plan: what its error says to programs, as something that can be said to people. */
export function whyNot(error: GeometryError): Note<keyof Pick<WeighingNotes, "no-solution">> {
  return weighingNote("no-solution", {
    error: error.code,
    path: error.detail.field,
    why: obstacle(error),
  });
}

function obstacle({
  code,
  detail: { field: path, value },
}: GeometryError): Note<keyof ObstacleNotes> {
  const [, lid] = /^space over the (right|left) lid$/.exec(path) ?? [];
  if (lid === "right" || lid === "left") return weighingNote("why-over-eye", { side: lid });
  const field = placeless(path) ?? path.split(", ").map(fieldNote);
  if (code === "missing-landmark" || value === undefined) {
    return weighingNote("why-missing", { field });
  }
  if (code === "contradicting-pins") return weighingNote("why-pins", { field });
  if (code === "no-solution") return weighingNote("why-no-place", { field });
  const range = RANGES[path];
  return range !== undefined && typeof value === "number" && Number.isFinite(value)
    ? weighingNote("why-range", { field, value, from: range[0], to: range[1] })
    : weighingNote("why-value", { field, value: shownValue(value) });
}

/** Where the arch of a brow, or the end of a guide, finds no place: the dot that would stand there. */
function placeless(path: string): readonly Note<"dot-of-side">[] | undefined {
  const [, side, mark = "arch"] =
    /^(right|left) (\w+) guide/.exec(path) ?? /^rise of the (right|left) brow$/.exec(path) ?? [];
  const dot = DOT_NAMES.find(
    (name) => DOTS[name].station === mark && DOTS[name].border === "upper",
  );
  if (side === undefined || dot === undefined) return undefined;
  return [weighingNote("dot-of-side", { side, dot })];
}

/** Choices that are numbers with limits, by their paths. */
const RANGES: Readonly<Record<string, readonly [from: number, to: number]>> =
  /* @__PURE__ */ Object.fromEntries<readonly [number, number]>([
    ...Object.entries(CHOSEN_SHARES),
    ...Object.entries(SHAPES).map(([name, most]) => [`shape.${name}`, [0, most]] as const),
  ]);
