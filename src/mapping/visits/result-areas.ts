import { type Brow, type CompleteDots } from "../../landmarks/index.js";
import { mapBrow } from "../../landmarks/internal.js";
import {
  naturalOutline,
  type Outline,
  outlineArea,
  type OutlineOverlap,
  overlapOutlines,
} from "../../proportions/index.js";
import type { Registration } from "../../symmetry/index.js";
import { flatPoint, type Measured, measured, type Point } from "../../units/index.js";
import { toRadians } from "../../units/internal.js";
import type { ResultAreas } from "./result.js";

type Bordered = Required<Brow<"mm">>;

/**
 * What is shared, lost and spread, with uncertainties: how much each area changes where one cause of error
 * at a time is one standard uncertainty off, the farther way of both. A border is taken to be off by as much
 * all along: what points that err by themselves add to lost and spread is no more than that.
 */
export function resultAreas(
  planned: Outline<"mm">,
  brow: Bordered,
  dots: Pick<CompleteDots<"mm">, "upperStart" | "tailEnd">,
  registration: Registration,
  borderU: number,
): ResultAreas {
  const over = (found: Bordered): OutlineOverlap => overlapOutlines(planned, naturalOutline(found));
  const found = over(brow);
  const offs = errorsOf(registration, dots, borderU).map((err) =>
    ([1, -1] as const).map((sign) => over(err(brow, sign))),
  );
  const area = (of: keyof OutlineOverlap): Measured => {
    const changes = offs.map((both) =>
      Math.max(...both.map((off) => Math.abs(off[of] - found[of]))),
    );
    // Rounding may leave an area of nothing a hair below it.
    return measured<number>(Math.max(found[of], 0), Math.hypot(...changes));
  };
  return {
    planned: outlineArea(planned),
    shared: area("shared"),
    lost: area("skinInside"),
    spread: area("hairOutside"),
  };
}

type Erring = (brow: Bordered, sign: 1 | -1) => Bordered;

function errorsOf(
  { similarity, shiftU, turnU, stretchU }: Registration,
  { upperStart, tailEnd }: Pick<CompleteDots<"mm">, "upperStart" | "tailEnd">,
  borderU: number,
): readonly Erring[] {
  const [centreX, centreY] = similarity.to;
  const turn = toRadians(turnU);
  const length = tailEnd[0] - upperStart[0];
  const outwards = Math.sign(length);
  const moved =
    (by: (x: number, y: number) => readonly [number, number]): Erring =>
    (brow, sign) =>
      mapBrow(brow, ([x, y]: Point<"mm">) => {
        const [across, up] = by(x, y);
        return flatPoint<"mm">(x + sign * across, y + sign * up);
      }) as Bordered;
  const border =
    (which: keyof Bordered): Erring =>
    (brow, sign) => ({
      ...brow,
      [which]: brow[which].map(([x, y]) => flatPoint<"mm">(x, y + sign * borderU)),
    });
  return [
    moved(() => [shiftU, 0]),
    moved(() => [0, shiftU]),
    moved((x, y) => [-turn * (y - centreY), turn * (x - centreX)]),
    moved((x, y) => [stretchU * (x - centreX), stretchU * (y - centreY)]),
    border("upper"),
    border("lower"),
    moved((x) => [(outwards * borderU * (tailEnd[0] - x)) / length, 0]),
    moved((x) => [(outwards * borderU * (x - upperStart[0])) / length, 0]),
  ];
}
