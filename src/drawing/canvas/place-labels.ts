import { cheapestPlace, HOMELESS } from "./cheapest-place.js";
import type { Label, PlacedLabel, Surroundings } from "./label.js";

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
    const best = cheapestPlace(label, { ...surroundings, waiting }, placed);
    const dear = best?.cost ?? HOMELESS;
    cost += dear;
    if (best !== undefined) placed.push((found[index] = best.found));
    const isWell = best !== undefined && (label.clear === true || best.found.leader === undefined);
    if (dear > most && !isWell && index >= headings) [most, worst] = [dear, index];
  }
  return { found, order, cost, worst };
}
