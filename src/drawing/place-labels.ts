import { type Box, clippedTo, grown, isWithin, overlap, type Spot, type Stretch } from "./box.js";
import { LINE_HEIGHT, textWidth } from "./text-size.js";

/** A word or a reading that belongs to one place of the picture. */
export interface Label {
  readonly text: string;
  /** What it names. */
  readonly at: Spot;
  /** Directions in which it may stand, the best first; x to the right, y down. */
  readonly towards: readonly Spot[];
  readonly size: number;
  readonly weight?: "normal" | "bold";
  /** Free space between the place and the nearest edge of the text. */
  readonly gap: number;
}

/** Where a label ended up. */
export interface PlacedLabel<Kind extends Label = Label> {
  readonly label: Kind;
  readonly box: Box;
  /** Present where the label had to move away from what it names. */
  readonly leader?: Stretch;
}

/** What labels have to respect. */
export interface Surroundings {
  /** Labels stay inside. */
  readonly bounds: Box;
  /** Never covered: the eyes, the dots, words already there. */
  readonly closed: readonly Box[];
  /** Covered where nothing better is left. */
  readonly strokes: readonly Stretch[];
}

/** What became of the labels. `homeless`: no room was left anywhere inside the bounds. */
export interface Placement<Kind extends Label> {
  readonly placed: readonly PlacedLabel<Kind>[];
  readonly homeless: readonly Kind[];
}

/**
 * Finds a place for every label, one after the other in the given order, so that no two touch.
 *
 * Greedy and without chance: each label takes the cheapest of its own candidates that is still free.
 */
export function placeLabels<Kind extends Label>(
  labels: readonly Kind[],
  surroundings: Surroundings,
): Placement<Kind> {
  const placed: PlacedLabel<Kind>[] = [];
  const homeless: Kind[] = [];
  for (const label of labels) {
    const best = cheapest(label, surroundings, placed);
    if (best === undefined) homeless.push(label);
    else placed.push(best);
  }
  return { placed, homeless };
}

/** How much farther than its gap a label is tried, in type sizes. */
const STEPS = [0, 0.35, 0.7, 1.1, 1.6, 2.3, 3.2, 4.5, 6.5, 9, 13];

/** A label this much farther away than its gap gets a leader, in type sizes. */
const LEADER_FROM = 0.9;

const ALL_AROUND: readonly Spot[] = Array.from({ length: 16 }, (_, index) => {
  const angle = (index * Math.PI) / 8;
  return [Math.cos(angle), Math.sin(angle)] as const;
});

/** What it costs, for each type size: to stand farther away, in a later direction, on strokes. */
const COST = { away: 1, turn: 0.5, elsewhere: 3, stroke: 2.5 };

interface Candidate<Kind extends Label> {
  readonly cost: number;
  readonly found: PlacedLabel<Kind>;
}

function cheapest<Kind extends Label>(
  label: Kind,
  surroundings: Surroundings,
  placed: readonly PlacedLabel[],
): PlacedLabel<Kind> | undefined {
  const width = textWidth(label.text, label.size, label.weight);
  const height = LINE_HEIGHT * label.size;
  const directions = [
    ...label.towards.map((direction, index) => ({ direction, turned: index * COST.turn })),
    ...ALL_AROUND.map((direction) => ({ direction, turned: COST.elsewhere })),
  ];
  let best: Candidate<Kind> | undefined;
  for (const step of STEPS) {
    // Nothing farther away can be cheaper any more.
    if (best !== undefined && best.cost <= step * COST.away) break;
    for (const { direction, turned } of directions) {
      const box = beside(label.at, direction, label.gap + step * label.size, width, height);
      best = cheaper(label, box, turned + step * COST.away, best, surroundings, placed);
    }
  }
  return best?.found ?? anywhere(label, width, height, surroundings, placed);
}

/** The last resort: the nearest free place of the whole picture, tried row by row. */
function anywhere<Kind extends Label>(
  label: Kind,
  width: number,
  height: number,
  surroundings: Surroundings,
  placed: readonly PlacedLabel[],
): PlacedLabel<Kind> | undefined {
  const { bounds } = surroundings;
  let best: Candidate<Kind> | undefined;
  for (let y = bounds.y; y + height <= bounds.y + bounds.height; y += height) {
    for (let x = bounds.x; x + width <= bounds.x + bounds.width; x += Math.max(width / 2, height)) {
      const away = Math.hypot(x + width / 2 - label.at[0], y + height / 2 - label.at[1]);
      const cost = (COST.away * away) / label.size;
      best = cheaper(label, { x, y, width, height }, cost, best, surroundings, placed);
    }
  }
  return best?.found;
}

/** The better of the best so far and a box, if that is free. */
function cheaper<Kind extends Label>(
  label: Kind,
  box: Box,
  moving: number,
  best: Candidate<Kind> | undefined,
  surroundings: Surroundings,
  placed: readonly PlacedLabel[],
): Candidate<Kind> | undefined {
  if (best !== undefined && moving >= best.cost) return best;
  const leader = leaderTo(label, box);
  if (!isFree(box, leader, label, surroundings, placed)) return best;
  const cost = moving + COST.stroke * (covered(box, surroundings.strokes) / label.size);
  if (best !== undefined && cost >= best.cost) return best;
  return { cost, found: { label, box, ...(leader === undefined ? {} : { leader }) } };
}

/** The box that stands in a direction from a place, its nearest edge or corner at a distance. */
function beside(at: Spot, direction: Spot, away: number, width: number, height: number): Box {
  const size = Math.hypot(direction[0], direction[1]);
  const [x, y] = [direction[0] / size, direction[1] / size];
  // Near-horizontal directions centre the box vertically, near-vertical ones horizontally.
  const across = Math.max(-1, Math.min(1, x * Math.SQRT2));
  const down = Math.max(-1, Math.min(1, y * Math.SQRT2));
  return {
    x: at[0] + x * away + (across * width) / 2 - width / 2,
    y: at[1] + y * away + (down * height) / 2 - height / 2,
    width,
    height,
  };
}

/** From the named place to the nearest point of the label's edge. */
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

function isFree(
  box: Box,
  leader: Stretch | undefined,
  label: Label,
  { bounds, closed }: Surroundings,
  placed: readonly PlacedLabel[],
): boolean {
  const margin = APART * label.size;
  const roomy = grown(box, margin);
  if (!isWithin(box, bounds) || closed.some((other) => overlap(roomy, other))) return false;
  return placed.every(
    (other) =>
      !overlap(roomy, other.box) &&
      (other.leader === undefined || clippedTo(roomy, other.leader) === undefined) &&
      (leader === undefined || clippedTo(grown(other.box, margin), leader) === undefined),
  );
}

/** How much stroke lies under a box. */
function covered(box: Box, strokes: readonly Stretch[]): number {
  let sum = 0;
  for (const stroke of strokes) {
    const inside = clippedTo(box, stroke);
    if (inside === undefined) continue;
    sum += Math.hypot(inside.to[0] - inside.from[0], inside.to[1] - inside.from[1]);
  }
  return sum;
}
