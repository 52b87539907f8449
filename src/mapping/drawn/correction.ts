import { type Dot, DOTS } from "../../landmarks/index.js";
import type { Side } from "../../units/index.js";
import type { Deviation, DotDeviation, MeasureDeviation } from "./deviation.js";
import { inHalves } from "../choices/half-millimetres.js";
import { MEASURE_WORDS } from "../choices/measure-words.js";

/** How to bring a dot back to its plan along those axes on which it is outside. */
export function dotCorrection(
  side: Side,
  dot: Dot,
  outward: Deviation,
  up: Deviation,
): Pick<DotDeviation, "correction"> {
  const ways = [wayBack(up, "up", "down"), wayBack(outward, "outward", "inward")].filter(
    (way) => way !== undefined,
  );
  return ways.length === 0 ? {} : { correction: `${side} ${DOTS[dot].words}: ${ways.join(", ")}` };
}

function wayBack(deviation: Deviation, positive: string, negative: string): string | undefined {
  if (deviation.decision?.outcome !== "outside") return undefined;
  const { value } = deviation.difference;
  return `${value < 0 ? positive : negative} ${printed(value, "")}`;
}

/** By how much a measure that is outside has to change. */
export function measureCorrection(
  { side, measure }: Pick<MeasureDeviation, "side" | "measure">,
  deviation: Deviation,
): Pick<MeasureDeviation, "correction"> {
  if (deviation.decision?.outcome !== "outside") return {};
  const { value } = deviation.difference;
  const name = `${side === undefined ? "" : `${side} `}${MEASURE_WORDS[measure]}`;
  const [more, less] = EXCESS[measure] ?? ["too long", "too short"];
  const amount = printed(value, measure);
  return { correction: `${name}: ${amount} ${value > 0 ? more : less}` };
}

/** What too much and too little are called; lengths are too long or too short. */
const EXCESS: {
  readonly [Name in MeasureDeviation["measure"]]?: readonly [more: string, less: string];
} = {
  frontShare: ["too much", "too little"],
  startToStart: ["too wide", "too narrow"],
  startDistance: ["too far out", "too far in"],
  archDistance: ["too far out", "too far in"],
  tailDistance: ["too far out", "too far in"],
  startHeight: ["too high", "too low"],
  archHeight: ["too high", "too low"],
  tailHeight: ["too high", "too low"],
  startThickness: ["too thick", "too thin"],
  bodyThickness: ["too thick", "too thin"],
  archThickness: ["too thick", "too thin"],
  lidToBrow: ["too much", "too little"],
};

/** In halves of a millimetre, as a pencil draws; finer only where that would say nothing. */
function printed(value: number, measure: string): string {
  const amount = Math.abs(value);
  if (measure === "frontShare") return amount.toFixed(2);
  return `${inHalves(amount) === 0 ? amount.toFixed(1) : inHalves(amount)} mm`;
}
