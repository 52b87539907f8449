import { heightOver } from "../../geometry/internal.js";
import type { Brow, CompleteDots, Dot } from "../../landmarks/index.js";
import { type Outline, outlineBorders } from "../../proportions/index.js";
import { type Registration } from "../../symmetry/index.js";
import { registrationU } from "../../symmetry/internal.js";
import {
  type DecisionOptions,
  flatPoint,
  length,
  type Length,
  measured,
  type Side,
  type ToleranceName,
  type ToleranceSet,
} from "../../units/index.js";
import { decideUnder } from "../../units/internal.js";
import { type TouchUpCode, visitNote } from "./notes.js";
import type { TouchUp } from "./result.js";

/** The brow as found, and how well it is known. */
export interface Found {
  readonly side: Side;
  readonly brow: Required<Brow<"mm">>;
  readonly registration: Registration;
  readonly borderU: number;
}

/** Along the plan from dot to dot: where something of it is not covered, each with its greatest gap. */
export function touchUps(
  planned: Outline<"mm">,
  dots: CompleteDots<"mm">,
  found: Found,
  tolerances: ToleranceSet,
  options: DecisionOptions,
): readonly TouchUp[] {
  const columns = columnsOf(planned, dots, found.brow);
  return STRETCHES.flatMap(([from, to]) => {
    const [start, end] = [Math.abs(dots[from][0]), Math.abs(dots[to][0])];
    const here = columns.filter(({ x }) => Math.abs(x) > start && Math.abs(x) < end);
    return (["upper", "lower", "end"] as const).flatMap((along): readonly TouchUp[] => {
      const [area, widest] = gapOf(along, here);
      if (widest === undefined) return [];
      const at = registrationU(flatPoint(widest.x, widest.top), found.registration);
      const u = Math.hypot(found.borderU, along === "end" ? at.across : at.up);
      const gap = measured(length<"mm">(widest.gap), length<"mm">(u));
      const { decision } = decideUnder(tolerances, TOLERANCES[along], gap, options);
      if (decision?.outcome !== "outside") return [];
      const { side } = found;
      const values = { side, from, to, area: round(area), gap: round(gap.value) };
      const note = visitNote(CODES[along], values);
      return [{ side, from, to, along, area, gap, decision, note }];
    });
  });
}

const STRETCHES: readonly (readonly [Dot, Dot])[] = [
  ["upperStart", "upperBody"],
  ["upperBody", "upperArch"],
  ["upperArch", "tailEnd"],
];

type Along = TouchUp["along"];

const TOLERANCES: Readonly<Record<Along, ToleranceName>> = {
  upper: "thickness",
  lower: "thickness",
  end: "position",
};

const CODES: Readonly<Record<Along, TouchUpCode>> = {
  upper: "fill-upper",
  lower: "fill-lower",
  end: "fill-end",
};

/** What of a narrow upright strip of the plan is not covered. */
interface Column {
  readonly x: number;
  readonly top: number;
  readonly upper: number;
  readonly lower: number;
  /** The whole of it, where the brow as found does not reach here. */
  readonly end: number;
  readonly width: number;
}

/** About how wide a strip is. */
const WIDTH = 0.05;
/** How far the borders of the plan may be read off its curves. */
const STRAYS = length(0.001);

function columnsOf(
  planned: Outline<"mm">,
  { upperStart, tailEnd }: CompleteDots<"mm">,
  brow: Required<Brow<"mm">>,
): readonly Column[] {
  const borders = outlineBorders(planned, STRAYS);
  const count = Math.ceil(Math.abs(tailEnd[0] - upperStart[0]) / WIDTH);
  const step = (tailEnd[0] - upperStart[0]) / count;
  return Array.from({ length: count }, (_, index): Column => {
    const x = length<"mm">(upperStart[0] + (index + 0.5) * step);
    const top = heightOver(x, borders.upper) ?? 0;
    const bottom = heightOver(x, borders.lower) ?? top;
    const [high, low] = [over(x, brow.upper), over(x, brow.lower)];
    const at = { x, top, width: Math.abs(step) };
    if (high === undefined || low === undefined || low >= top || high <= bottom) {
      return { ...at, upper: 0, lower: 0, end: Math.max(top - bottom, 0) };
    }
    return { ...at, upper: Math.max(top - high, 0), lower: Math.max(low - bottom, 0), end: 0 };
  });
}

/** The height of a border over a place that it reaches. */
function over(x: Length<"mm">, border: Brow<"mm">["upper"]): Length<"mm"> | undefined {
  const across = border.map((point) => point[0]);
  const reaches = x >= Math.min(...across) && x <= Math.max(...across);
  return reaches ? heightOver(x, border) : undefined;
}

/** Area of a gap, and its greatest width with where that is; sideways all of it at an end. */
function gapOf(
  along: Along,
  columns: readonly Column[],
): readonly [
  area: number,
  widest?: { readonly x: number; readonly top: number; readonly gap: number },
] {
  const open = columns.filter((column) => column[along] > 0);
  const area = open.reduce((sum, column) => sum + column[along] * column.width, 0);
  const [widest] = [...open].sort((one, other) => other[along] - one[along]);
  if (widest === undefined) return [area];
  const gap = along === "end" ? open.reduce((sum, { width }) => sum + width, 0) : widest[along];
  return [area, { x: widest.x, top: widest.top, gap }];
}

function round(value: number): number {
  return Math.round(10 * value) / 10;
}
