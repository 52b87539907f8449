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
import { LINE_HEIGHT, textWidth } from "./text-size.js";

/** A word or a reading that belongs to one place of the picture. */
export interface Label {
  readonly text: string;
  readonly at: Spot;
  /** Other places of the same thing, nearly as good to stand at. */
  readonly orAt?: readonly Spot[];
  /** Directions in which it may stand, the best first; x to the right, y down. */
  readonly towards: readonly Spot[];
  readonly size: number;
  readonly weight?: "normal" | "bold";
  /** Free space between the place and the nearest edge of the text. */
  readonly gap: number;
  /** Whether it never covers a stroke; it then stands farther away instead. */
  readonly clear?: boolean;
  /** What may be done where it finds no place within reach: left out, or written beneath the picture with a key here. */
  readonly yields?: "out" | "key" | undefined;
}

export interface PlacedLabel<Kind extends Label = Label> {
  readonly label: Kind;
  readonly box: Box;
  /** Present where the label had to move away from what it names. */
  readonly leader?: Stretch;
}

export interface Surroundings {
  readonly bounds: Box;
  /** Never covered: the eyes, the dots, words already there. */
  readonly closed: readonly Box[];
  /** Never touched: lines that are read together with their figure. */
  readonly barred: readonly Stretch[];
  /** Covered where nothing better is left. */
  readonly strokes: readonly Stretch[];
  /** Strokes among them that only what finds no other place is written over, or led across: the borders of brows. */
  readonly borders?: readonly Stretch[];
  /** How far what may yield is led at most, in type sizes, and through no border. Default: as far as it takes. */
  readonly reach?: number;
}

/** What became of the labels. `homeless`: no room was left inside the bounds and within reach. */
export interface Placement<Kind extends Label> {
  readonly placed: readonly PlacedLabel<Kind>[];
  readonly homeless: readonly Kind[];
}

/**
 * Each label in turn takes the cheapest of its candidates that is still free, so that no two touch. The one that fares
 * worst is then tried before the others, as long as that makes the whole cheaper; none before the first so many, which
 * are headings.
 */
export function placeLabels<Kind extends Label>(
  labels: readonly Kind[],
  surroundings: Surroundings,
  headings = 0,
): Placement<Kind> {
  let best = inTurn(labels, [...labels.keys()], surroundings, headings);
  for (let share = 0; best.worst !== undefined && share < 1;) {
    const { order, worst } = best;
    const turn = Math.floor(headings + share * (order.indexOf(worst) - headings));
    const others = order.filter((index) => index !== worst);
    const sooner = [...others.slice(0, turn), worst, ...others.slice(turn)];
    const next = inTurn(labels, sooner, surroundings, headings);
    if (next.cost < best.cost) [best, share] = [next, 0];
    else share += 0.5;
  }
  const { found } = best;
  return {
    placed: found.flatMap((one) => one ?? []),
    homeless: labels.filter((_, index) => found[index] === undefined),
  };
}

/** What labels come to that are placed in an order, and which of them, but for headings, fares worst, if that stands at a leader. */
interface Attempt<Kind extends Label> {
  readonly found: readonly (PlacedLabel<Kind> | undefined)[];
  readonly order: readonly number[];
  readonly cost: number;
  readonly worst: number | undefined;
}

/** What a label may cost at its leader before others make way for it. */
const DEAR = 5;

function inTurn<Kind extends Label>(
  labels: readonly Kind[],
  order: readonly number[],
  surroundings: Surroundings,
  headings: number,
): Attempt<Kind> {
  const found: PlacedLabel<Kind>[] = [];
  const placed: PlacedLabel[] = [];
  let [cost, most, worst]: [number, number, number | undefined] = [0, DEAR, undefined];
  for (const [turn, index] of order.entries()) {
    const waiting = order.slice(turn + 1).map((later) => (labels[later] as Kind).at);
    const label = labels[index] as Kind;
    const best = cheapest(label, { ...surroundings, waiting }, placed);
    const dear = best?.cost ?? COST.homeless;
    cost += dear;
    if (best !== undefined) placed.push((found[index] = best.found));
    const isWell = best !== undefined && (label.clear === true || best.found.leader === undefined);
    if (dear > most && !isWell && index >= headings) [most, worst] = [dear, index];
  }
  return { found, order, cost, worst };
}

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
  homeless: 90,
};

interface Scene extends Surroundings {
  readonly waiting: readonly Spot[];
}

interface Candidate<Kind extends Label> {
  readonly cost: number;
  readonly found: PlacedLabel<Kind>;
}

function cheapest<Kind extends Label>(
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
