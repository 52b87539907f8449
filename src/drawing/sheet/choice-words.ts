import { DOTS } from "../../landmarks/index.js";
import { type Choices, MEASURE_WORDS, type PlannedChoice } from "../../mapping/index.js";
import { type Decision, eachSide, type Side } from "../../units/index.js";
import { CONVENTION_WORDS, decimal, inMillimetres, signedMillimetres } from "../canvas/words.js";

/** What was chosen, in the order in which it is decided; what was left open is not said. */
export function choiceTitle(choices: Choices): string {
  const { lead, carry, levels, start, arch, tailHeight, thickness, pins = [] } = choices;
  const { levelLimit, noseBent, eyeWidthShare, frontShare, shape = {} } = choices;
  const parts = [
    lead === undefined || lead === "middle" ? "both meet half-way" : `${lead} leads`,
    carry === "measure" && "carried by measure",
    levels && `levels: ${levels}`,
    levelLimit && `heights at most ${inMillimetres(levelLimit)} off the hair`,
    noseBent !== undefined && `nose taken as ${noseBent ? "bent" : "straight"}`,
    start && `start ${CONVENTION_WORDS[start]}`,
    arch && `arch ${CONVENTION_WORDS[arch]}`,
    eyeWidthShare && `share of the eye’s width ${figure(eyeWidthShare, 2)}`,
    frontShare && `front share ${figure(frontShare, 2)}`,
    tailHeight && `tail ${TAIL_WORDS[tailHeight]}`,
    thickness && `${STATIONS.map((at) => figure(thickness[at], 1)).join(", ")} mm thick`,
    ...SHAPES.map(
      ([name, words]) => shape[name] !== undefined && `${words} ${figure(shape[name], 2)}`,
    ),
    pins.length > 0 && `${pins.length} dot${pins.length === 1 ? "" : "s"} pinned`,
  ];
  return parts.filter(Boolean).join("; ");
}

/** What cannot be planned may be no number at all. */
function figure(value: unknown, decimals: number): string {
  return typeof value === "number" ? value.toFixed(decimals) : String(value);
}

const STATIONS = ["start", "body", "arch"] as const;

const SHAPES = [
  ["angularity", "angularity"],
  ["startSlope", "slope at the start"],
  ["tailSlope", "slope at the tail end"],
  ["frontRoundness", "roundness of the front"],
] as const;

const TAIL_WORDS: Readonly<Record<NonNullable<Choices["tailHeight"]>, string>> = {
  natural: "as high as it grows",
  "level-with-lower-start": "level with the lower start",
  "level-with-upper-start": "level with the upper start",
};

/** What a choice would do, a line for each thing weighed. */
export function choiceFigures(row: PlannedChoice): readonly (readonly [string, string])[] {
  const { greatestMove: most, meanMove, areas, frontShare, lidRoom } = row;
  const areaOf = (area: number | undefined): string =>
    area === undefined ? "not known" : `${decimal(area, 0)} mm²`;
  return [
    ["mean move", inMillimetres(meanMove)],
    ["greatest move", `${inMillimetres(most.by)}, ${most.side} ${DOTS[most.dot].words}`],
    ["hair to remove", areaOf(areas?.hairToRemove)],
    ["skin to fill", areaOf(areas?.skinToFill)],
    ["sides apart above tolerance", apart(row)],
    ["room over the lid", bothSides((side) => signedMillimetres(lidRoom[side]))],
    ["front share", bothSides((side) => shareWords(frontShare[side]))],
  ];
}

function apart({ comparison }: PlannedChoice): string {
  const measures = comparison.differences
    .filter(({ decision }) => decision?.outcome === "outside")
    .map(({ measure }) => MEASURE_WORDS[measure]);
  return measures.length === 0 ? "in nothing" : measures.join(", ");
}

function shareWords({ value, decision }: { value: number; decision?: Decision }): string {
  return decision === undefined ? value.toFixed(2) : `${value.toFixed(2)} ${decision.outcome}`;
}

function bothSides(words: (side: Side) => string): string {
  const { right, left } = eachSide(words);
  if (right === left) return `${right}, both sides`;
  return `${unbroken(`right ${right}`)}, ${unbroken(`left ${left}`)}`;
}

function unbroken(text: string): string {
  return text.replaceAll(" ", "\u00A0");
}
