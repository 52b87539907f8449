import type { BrowPlan, Side } from "brow-geometry";
import { type Arrow, greatestMoves } from "../planning/moves.js";
import type { Box } from "./box.js";
import { outlineSpots, pathOf, type Place } from "./place.js";
import { SIDES } from "./sides.js";

interface PlanLayerProps {
  readonly plan: BrowPlan;
  readonly place: Place;
  /** What the stage shows. */
  readonly box: Box;
  readonly unit: number;
  /** Arrows belong to a plan at rest: while a finger moves, nobody knows yet which moves are told. */
  readonly hasArrows: boolean;
}

/** The brows as they grow, as they are planned, and the moves that matter most between both. */
export function PlanLayer({ plan, place, box, unit, hasArrows }: PlanLayerProps) {
  return (
    <>
      {SIDES.map((side) => (
        <path key={side} class="hair" d={hairOf(plan, side, place)} />
      ))}
      {SIDES.map((side) => {
        const outline = pathOf(outlineSpots(plan, side, place), true);
        return (
          <g key={side}>
            <path class="edge" d={outline} />
            <path class="planned" d={outline} />
          </g>
        );
      })}
      {hasArrows &&
        greatestMoves(plan).map((arrow) => (
          <ArrowMark key={arrow.text} arrow={arrow} place={place} box={box} unit={unit} />
        ))}
    </>
  );
}

function hairOf({ face }: BrowPlan, side: Side, place: Place): string {
  const { upper, lower } = face[side].brow;
  const border = [...upper, ...[...(lower ?? [])].reverse()].map((point) => place(point));
  return pathOf(border, lower !== undefined);
}

interface ArrowProps {
  readonly arrow: Arrow;
  readonly place: Place;
  readonly box: Box;
  readonly unit: number;
}

/** How far its figure stands from an arrow, and how large its plate is, in pixels of the screen. */
const AWAY = 28;
const PLATE = { height: 22, letter: 7.5, margin: 12 };

function ArrowMark({ arrow, place, box, unit }: ArrowProps) {
  const { dot, signs } = arrow;
  const [from, to] = [place(arrow.from), place(arrow.to)];
  const angle = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  const y = to[1] + (dot.startsWith("lower") ? AWAY : -AWAY) * unit;
  const width = PLATE.letter * signs.length + PLATE.margin;
  // The plate stays within the picture.
  const room = (width / 2) * unit;
  const x = Math.min(Math.max(to[0], box.x + room), box.x + box.width - room);
  const line = pathOf([from, to]);
  return (
    <g class="arrow" aria-hidden="true">
      <path class="edge" d={line} />
      <path d={line} />
      <path
        class="head"
        d="M0 0L-9 5L-9 -5Z"
        transform={`translate(${to[0]} ${to[1]}) rotate(${angle}) scale(${unit})`}
      />
      <g transform={`translate(${x} ${y}) scale(${unit})`}>
        <rect x={-width / 2} y={-PLATE.height / 2} width={width} height={PLATE.height} rx="11" />
        <text text-anchor="middle" dy="4.5">
          {signs}
        </text>
      </g>
    </g>
  );
}
