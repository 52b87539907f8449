import type { ReadonlySignal } from "@preact/signals";
import type { BrowPlan } from "brow-geometry";
import type { Sides } from "brow-geometry/units";
import { type Arrow, greatestMoves } from "../planning/moves.js";
import type { Box } from "./box.js";
import { pathOf, type Place } from "./place.js";
import { SIDES } from "./sides.js";

interface OutlinesProps {
  /** The brows as they grow. */
  readonly hair: Sides<string>;
  /** As they are planned: these paths alone change while a finger moves. */
  readonly planned: Sides<ReadonlySignal<string>>;
}

/** The brows as they grow, and over them as they are planned. */
export function Outlines({ hair, planned }: OutlinesProps) {
  return (
    <>
      {SIDES.map((side) => (
        <path key={side} class="hair" d={hair[side]} />
      ))}
      {SIDES.map((side) => (
        <g key={side}>
          <path class="edge" d={planned[side]} />
          <path class="planned" d={planned[side]} />
        </g>
      ))}
    </>
  );
}

interface ArrowsProps {
  readonly plan: BrowPlan;
  readonly place: Place;
  /** What the stage shows. */
  readonly box: Box;
  readonly unit: number;
}

/** The moves that matter most, from the hair to the plan. */
export function Arrows({ plan, ...others }: ArrowsProps) {
  return (
    <>
      {greatestMoves(plan).map((arrow) => (
        <ArrowMark key={arrow.text} arrow={arrow} {...others} />
      ))}
    </>
  );
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
  const width = PLATE.letter * signs.length + PLATE.margin;
  // The plate stays within the picture.
  const x = within(to[0], box.x, box.width, (width / 2) * unit);
  const away = (dot.startsWith("lower") ? AWAY : -AWAY) * unit;
  const y = within(to[1] + away, box.y, box.height, (PLATE.height / 2) * unit);
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

function within(at: number, start: number, length: number, room: number): number {
  return Math.min(Math.max(at, start + room), start + length - room);
}
