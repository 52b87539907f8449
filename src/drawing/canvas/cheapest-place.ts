import {
  type Box,
  clippedTo,
  grown,
  isWithin,
  overlap,
  type Spot,
  type Stretch,
  wayBetween,
} from "./box.js";
import type { Label, PlacedLabel, Surroundings } from "./label.js";
import { LINE_HEIGHT, textWidth } from "./text-size.js";

/** How much farther than its gap a label is tried, in type sizes. */
const STEPS = [0, 0.35, 0.7, 1.1, 1.6, 2.3, 3.2, 4.5, 6.5, 9, 13, 18, 25];

/** A label this much farther away than its gap gets a leader, in type sizes. */
const LEADER_FROM = 0.9;

/** A direction of length 1, and where the middle of a box lies that stands there: from its nearest edge or corner. */
interface Way {
  readonly along: Spot;
  /** As shares of half the box. Near-horizontal ways centre it vertically, near-vertical ones horizontally. */
  readonly aside: Spot;
}

function wayIn([x, y]: Spot): Way {
  const size = Math.hypot(x, y);
  const aside = (part: number): number => Math.max(-1, Math.min(1, part * Math.SQRT2));
  const along: Spot = [x / size, y / size];
  return { along, aside: [aside(along[0]), aside(along[1])] };
}

const ALL_AROUND: readonly Way[] = Array.from({ length: 16 }, (_, index) => {
  const angle = (index * Math.PI) / 8;
  return wayIn([Math.cos(angle), Math.sin(angle)]);
});

/**
 * What each type size costs; `waiting`: over a place still to be named, whose leader could not get away;
 * `border`: over a border, besides; `crossing` and `through`: of a leader, each stroke, and each closed box or border
 * that it runs across.
 */
const COST = {
  away: 1,
  turn: 0.5,
  along: 0.4,
  elsewhere: 3,
  stroke: 2.5,
  border: 4,
  waiting: 4,
  leader: 1,
  crossing: 1.5,
  through: 6,
};

/** What a label costs that finds no place. */
export const HOMELESS = 90;

interface Scene extends Surroundings {
  readonly waiting: readonly Spot[];
}

interface Candidate<Kind extends Label> {
  readonly cost: number;
  readonly found: PlacedLabel<Kind>;
}

/** The cheapest place of a label among others; undefined where none is free within reach. */
export function cheapestPlace<Kind extends Label>(
  label: Kind,
  surroundings: Scene,
  placed: readonly PlacedLabel[],
): Candidate<Kind> | undefined {
  const width = textWidth(label.text, label.size, label.weight);
  const height = LINE_HEIGHT * label.size;
  const candidates = [label.at, ...(label.orAt ?? [])].flatMap((at, place) => {
    const from = { ...label, at };
    const along = place * COST.along;
    return [
      ...label.towards.map((direction, index) => ({
        from,
        way: wayIn(direction),
        turned: along + index * COST.turn,
      })),
      ...(place > 0 && label.clear !== true
        ? []
        : ALL_AROUND.map((way) => ({ from, way, turned: along + COST.elsewhere }))),
    ];
  });
  let best: Candidate<Kind> | undefined;
  for (const step of STEPS) {
    // Nothing farther away can be cheaper any more, or is within reach.
    if (best !== undefined && best.cost <= step * COST.away) break;
    if (step > reachOf(label, surroundings)) break;
    const away = label.gap + step * label.size;
    for (const { from, way, turned } of candidates) {
      const moving = turned + step * COST.away;
      if (best !== undefined && moving >= best.cost) continue;
      const box = beside(from.at, way, away, width, height);
      best = cheaper(from, box, moving, best, surroundings, placed);
    }
  }
  return best;
}

/** The better of the best so far and a box, if that is free. */
function cheaper<Kind extends Label>(
  label: Kind,
  box: Box,
  moving: number,
  best: Candidate<Kind> | undefined,
  surroundings: Scene,
  placed: readonly PlacedLabel[],
): Candidate<Kind> | undefined {
  const leader = leaderTo(label, box);
  if (!isFree(box, leader, label, surroundings, placed)) return best;
  const over = covered(box, surroundings.strokes);
  if (label.clear === true && over > 0) return best;
  const standing =
    moving +
    (COST.stroke * over + COST.border * covered(box, surroundings.borders)) / label.size +
    COST.waiting * held(box, label, surroundings.waiting);
  if (best !== undefined && standing >= best.cost) return best;
  const cost = standing + (leader === undefined ? 0 : leading(leader, surroundings));
  if (best !== undefined && cost >= best.cost) return best;
  return { cost, found: { label, box, ...(leader === undefined ? {} : { leader }) } };
}

/** The box that stands on a way from a place, its nearest edge or corner at a distance. */
function beside(at: Spot, { along, aside }: Way, away: number, width: number, height: number): Box {
  return {
    x: at[0] + along[0] * away + (aside[0] * width) / 2 - width / 2,
    y: at[1] + along[1] * away + (aside[1] * height) / 2 - height / 2,
    width,
    height,
  };
}

function leaderTo(label: Label, box: Box): Stretch | undefined {
  const to: Spot = [
    Math.max(box.x, Math.min(label.at[0], box.x + box.width)),
    Math.max(box.y, Math.min(label.at[1], box.y + box.height)),
  ];
  const away = Math.hypot(to[0] - label.at[0], to[1] - label.at[1]);
  return away > label.gap + LEADER_FROM * label.size ? { from: label.at, to } : undefined;
}

/** Room between a label and everything else that is written, in type sizes. */
const APART = 0.3;

/** Room between a label and a barred line, in type sizes: less than a figure leaves to its own. */
const CLEAR = 0.15;

function isFree(
  box: Box,
  leader: Stretch | undefined,
  label: Label,
  surroundings: Surroundings,
  placed: readonly PlacedLabel[],
): boolean {
  const { bounds, closed, barred, borders = [] } = surroundings;
  const margin = APART * label.size;
  const roomy = grown(box, margin);
  if (!isWithin(box, bounds) || closed.some((other) => overlap(roomy, other))) return false;
  const clear = grown(box, CLEAR * label.size);
  if (barred.some((line) => clippedTo(clear, line) !== undefined)) return false;
  if (leader !== undefined) {
    if (barred.some((line) => crossed(leader, line))) return false;
    const reach = reachOf(label, surroundings);
    if (wayBetween(leader.from, leader.to).length > reach * label.size) return false;
    if (reach < Infinity && borders.some((line) => crossed(leader, line))) return false;
  }
  return placed.every(
    (other) =>
      !overlap(roomy, other.box) &&
      (other.leader === undefined || clippedTo(roomy, other.leader) === undefined) &&
      (leader === undefined || clippedTo(grown(other.box, margin), leader) === undefined),
  );
}

/** How far a label is led at most, in type sizes. */
function reachOf({ yields }: Label, { reach = Infinity }: Surroundings): number {
  return yields === undefined ? Infinity : reach;
}

function covered(box: Box, strokes: readonly Stretch[] = []): number {
  let sum = 0;
  for (const stroke of strokes) {
    const inside = clippedTo(box, stroke);
    if (inside === undefined) continue;
    sum += Math.hypot(inside.to[0] - inside.from[0], inside.to[1] - inside.from[1]);
  }
  return sum;
}

/** What a leader costs: it may run through the brow to where there is room, but not for nothing. */
function leading(leader: Stretch, { strokes, borders, closed }: Surroundings): number {
  const across = (lines: readonly Stretch[] = []): number =>
    lines.filter((line) => crossed(leader, line)).length;
  const through = closed.filter(
    (box) => !isWithin(spotBox(leader.from), box) && clippedTo(box, leader) !== undefined,
  ).length;
  return COST.leader + COST.crossing * across(strokes) + COST.through * (across(borders) + through);
}

/** How many places lie under a box or so near that it would stop their leaders. */
function held(box: Box, { size }: Label, spots: readonly Spot[]): number {
  const roomy = grown(box, APART * size);
  return spots.filter((spot) => isWithin(spotBox(spot), roomy)).length;
}

function spotBox([x, y]: Spot): Box {
  return { x, y, width: 0, height: 0 };
}

/** Whether a leader crosses a line; one that starts on it does not. */
function crossed({ from, to }: Stretch, line: Stretch): boolean {
  const start: Spot = [from[0] + NEAR * (to[0] - from[0]), from[1] + NEAR * (to[1] - from[1])];
  return (
    turn(start, to, line.from) * turn(start, to, line.to) < 0 &&
    turn(line.from, line.to, start) * turn(line.from, line.to, to) < 0
  );
}

/** The share of a leader that may still lie on what it starts from. */
const NEAR = 0.02;

/** Positive where the way over three spots turns one way, negative where it turns the other. */
function turn(one: Spot, two: Spot, three: Spot): number {
  return (two[0] - one[0]) * (three[1] - one[1]) - (two[1] - one[1]) * (three[0] - one[0]);
}
