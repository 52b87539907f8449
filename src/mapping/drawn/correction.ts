import { type Dot, DOTS, MEASURE_KINDS, MEASURES } from "../../landmarks/index.js";
import { amountOf, type KindOfMeasure, kindOf } from "../../landmarks/internal.js";
import type { Side } from "../../units/index.js";
import type { Deviation, DotDeviation, MeasureDeviation } from "./deviation.js";
import { inHalves } from "../choices/half-millimetres.js";

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
  return `${value < 0 ? positive : negative} ${printed(value, MEASURE_KINDS.distance)}`;
}

/** By how much a measure that is outside has to change. */
export function measureCorrection(
  { side, measure }: Pick<MeasureDeviation, "side" | "measure">,
  deviation: Deviation,
): Pick<MeasureDeviation, "correction"> {
  if (deviation.decision?.outcome !== "outside") return {};
  const { value } = deviation.difference;
  const name = `${side === undefined ? "" : `${side} `}${MEASURES[measure].words}`;
  const kind = kindOf(measure);
  const amount = printed(value, kind);
  return { correction: `${name}: ${amount} ${value > 0 ? kind.more : kind.less}` };
}

/** In halves of a millimetre, as a pencil draws; finer only where that would say nothing. */
function printed(value: number, kind: KindOfMeasure): string {
  const halves = inHalves(Math.abs(value));
  return kind.unit === "mm" && halves !== 0 ? `${halves} mm` : amountOf(kind, value);
}
