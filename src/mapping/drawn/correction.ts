import { type Dot, DOTS, MEASURE_KINDS, MEASURES } from "../../landmarks/index.js";
import { amountOf, kindOf, type KindOfMeasure } from "../../landmarks/internal.js";
import type { Way } from "../../symmetry/index.js";
import { WAYS } from "../../symmetry/internal.js";
import type { Side } from "../../units/index.js";
import { fill } from "../../units/internal.js";
import type { Deviation, DotDeviation, MeasureDeviation } from "./deviation.js";
import { MOVES } from "../plan/words.js";
import { inHalves } from "../plan/moves.js";

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
  const name = { side, dot: DOTS[dot].words };
  return ways.length === 0
    ? {}
    : { correction: fill(MOVES.move, { ...name, ways: ways.join(", ") }) };
}

function wayBack(deviation: Deviation, positive: Way, negative: Way): string | undefined {
  if (deviation.decision?.outcome !== "outside") return undefined;
  const { value } = deviation.difference;
  const by = printed(value, MEASURE_KINDS.distance);
  return fill(WAYS[value < 0 ? positive : negative], { by });
}

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
