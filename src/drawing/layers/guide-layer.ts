import {
  distanceAlongLine,
  distanceFromLine,
  type Line,
  pointOnLine,
} from "../../geometry/index.js";
import { MARKS } from "../../landmarks/internal.js";
import type { PlannedDots } from "../../mapping/index.js";
import {
  deepPoint,
  flatPoint,
  hasDepth,
  length,
  type Point,
  type Polyline,
  type Side,
} from "../../units/index.js";
import type { Spot } from "../canvas/box.js";
import { type Brush, pathData, stretches, strokeGroup } from "../canvas/brush.js";
import { type EyeRoom, passage } from "./eye-room.js";
import { label } from "../../words/internal.js";
import { type Layer, stacked } from "../canvas/layer.js";
import { TYPE_SIZES } from "../canvas/text-size.js";
import { seenDirection } from "../canvas/view.js";
import { depthAt, type FaceSide, type Skin } from "../../landmarks/index.js";
import type { Guide } from "../../proportions/index.js";

/** How far a guide rises above its dot, in steps: past the rulers. */
const RISE = 10.5;

/** Shorter pieces of a guide would only be specks, in millimetres. */
const SHORTEST = 1;

const DOT_OF = { start: "upperStart", arch: "upperArch", tail: "tailEnd" } as const;

/** Guides from their landmark to above their dot, with a gap at the eye; an arch without one gets a stroke. */
export function guidesLayer(
  { face, skin, ...plan }: PlannedDots,
  side: Side,
  eye: EyeRoom,
  brush: Brush,
): Layer {
  const dots = plan.dots[side];
  const { view, palette } = brush;
  const outward: Spot = seenDirection([side === "left" ? 1 : -1, 0], view);
  const up = seenDirection([0, 1], view);
  const inward: Spot = [-outward[0], -outward[1]];
  const towards = {
    start: [up, sum(up, inward), inward, outward],
    arch: [up, sum(up, inward), sum(up, outward), outward, inward],
    tail: [up, sum(up, outward), outward, inward],
  };
  const rise = (RISE * view.size) / view.millimetre;
  const layers = MARKS.map((mark): Layer => {
    const dot = dots[DOT_OF[mark]];
    const guide = plan.guides[side].find((candidate) => candidate.mark === mark);
    const lines =
      guide === undefined
        ? [[dot, flatPoint<"mm">(dot[0], dot[1] + rise)]]
        : guideStretches(guide.line, dot, rise, eye).map(guidePath(guide, face[side], dot, skin));
    const spots = lines.map((points) => points.map(view.place));
    const top = spots.at(-1)?.at(-1) as Spot;
    const data = spots.map((line) => pathData(line));
    return {
      elements: [strokeGroup(mark, `guide ${mark} ${side}`, data, brush)],
      labels: [
        {
          text: label(brush.words, `line-${mark}`),
          at: top,
          // Names stand at other places of their line before they are led to: higher or lower, then beneath the eye.
          orAt: spots.flatMap(along).reverse(),
          towards: towards[mark],
          size: TYPE_SIZES.label * view.size,
          gap: 0.9 * view.size,
          weight: "bold",
          yields: "out",
          colour: palette.strokes[mark],
        },
      ],
      strokes: spots.flatMap(stretches),
    };
  });
  return stacked(layers);
}

/** The parts of a guide that are drawn, up to so much above its dot, as distances along it. */
export function guideStretches(
  line: Line<"mm">,
  dot: Point<"mm">,
  rise: number,
  eye: EyeRoom,
): readonly (readonly [from: number, to: number])[] {
  const end = distanceAlongLine(dot, line) + rise;
  const [enters, leaves] = passage(line, eye) ?? [end, end];
  const parts = [
    [0, Math.min(enters, end)],
    [Math.max(leaves, 0), end],
  ] as const;
  return parts.filter(([from, to]) => to - from > SHORTEST);
}

/** Places along a line, from where it begins. */
function along(line: readonly Spot[]): readonly Spot[] {
  const [[fromX, fromY], [toX, toY]] = [line[0] as Spot, line.at(-1) as Spot];
  return NAMED_AT.map((share): Spot => [
    fromX + share * (toX - fromX),
    fromY + share * (toY - fromY),
  ]);
}

/** Where along a part of a guide its name may stand as well. */
const NAMED_AT = [0.3, 0.5, 0.7, 0.9];

function sum(one: Spot, other: Spot): Spot {
  return [one[0] + other[0], one[1] + other[1]];
}

/** A landmark lies on a guide that was drawn through it, whatever rounding makes of it; in mm. */
const ON_GUIDE = 1e-6;

interface Bend {
  readonly along: number;
  readonly depth: number;
}

/** A stretch of a guide, as deep as its landmarks and dot: on a turned head's photo it bends at each of them. */
function guidePath(
  guide: Guide,
  landmarks: FaceSide<"mm">,
  dot: Point<"mm">,
  skin: Skin,
): (stretch: readonly [from: number, to: number]) => Polyline<"mm"> {
  const bends = bendsOf(guide, landmarks, dot, skin);
  const pointAt = (along: number): Point<"mm"> => {
    const flat = pointOnLine(guide.line, length(along));
    const depth = depthBetween(bends, along);
    return depth === undefined ? flat : deepPoint(flat[0], flat[1], depth);
  };
  return ([from, to]) => {
    const within = bends
      .map(({ along }) => along)
      .filter((along) => along - from > SHORTEST && to - along > SHORTEST);
    return [from, ...within, to].map(pointAt);
  };
}

function bendsOf(
  { line, from }: Guide,
  landmarks: FaceSide<"mm">,
  dot: Point<"mm">,
  skin: Skin,
): readonly Bend[] {
  const end = { along: distanceAlongLine(dot, line), depth: depthAt(dot, skin) };
  const bends = from.flatMap((name): readonly Bend[] => {
    const point = landmarks[name];
    if (point === undefined || !hasDepth(point)) return [];
    const along = distanceAlongLine(point, line);
    const onGuide = Math.abs(distanceFromLine(point, line)) < ON_GUIDE && along < end.along;
    return onGuide ? [{ along, depth: point[2] }] : [];
  });
  return bends.length === 0 ? [] : [...bends, end];
}

/** The depth at a place of the guide, which goes on past its dot as it came there. */
function depthBetween(bends: readonly Bend[], along: number): number | undefined {
  const next = bends.findIndex((bend) => bend.along >= along);
  const [before, after] = next < 0 ? bends.slice(-2) : [bends[next - 1], bends[next]];
  if (after === undefined || before === undefined) return after?.depth;
  const share = (along - before.along) / (after.along - before.along);
  return before.depth + share * (after.depth - before.depth);
}
