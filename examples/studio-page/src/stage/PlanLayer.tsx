import type { BrowPlan, Side } from "brow-geometry";
import { type Arrow, greatestMoves } from "../planning/moves.js";
import { outlineSpots, pathOf, type Place } from "./place.js";

interface PlanLayerProps {
  readonly plan: BrowPlan;
  readonly place: Place;
  readonly unit: number;
  /** Arrows belong to a plan at rest: while a finger moves, nobody knows yet which moves are told. */
  readonly hasArrows: boolean;
}

const SIDES: readonly Side[] = ["right", "left"];

/** The brows as they grow, as they are planned, and the moves that matter most between both. */
export function PlanLayer({ plan, place, unit, hasArrows }: PlanLayerProps) {
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
        greatestMoves(plan).map((arrow, index) => (
          <ArrowMark key={index} arrow={arrow} number={index + 1} place={place} unit={unit} />
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
  readonly number: number;
  readonly place: Place;
  readonly unit: number;
}

/** How far its number stands from an arrow, in pixels of the screen, and how large it is. */
const AWAY = 26;
const BADGE = 10;

function ArrowMark({ arrow, number, place, unit }: ArrowProps) {
  const [from, to] = [place(arrow.from), place(arrow.to)];
  const angle = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  const isLower = arrow.move.dot.startsWith("lower");
  const [x, y] = [to[0], to[1] + (isLower ? AWAY : -AWAY) * unit];
  return (
    <g class="arrow" aria-hidden="true">
      <path class="edge" d={pathOf([from, to])} />
      <path d={pathOf([from, to])} />
      <path
        class="head"
        d="M0 0L-7 4L-7 -4Z"
        transform={`translate(${to[0]} ${to[1]}) rotate(${angle}) scale(${unit})`}
      />
      <g transform={`translate(${x} ${y}) scale(${unit})`}>
        <circle r={BADGE} />
        <text text-anchor="middle" dy="4.5">
          {number}
        </text>
      </g>
    </g>
  );
}
