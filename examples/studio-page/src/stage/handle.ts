import type { Spot } from "./box.js";

/** Something on the stage that fingers and arrow keys move. */
export interface Handle {
  readonly id: string;
  /** What it is, for those who hear the page. */
  readonly label: string;
  readonly at: Spot;
  readonly look: "dot" | "pinned" | "border" | "mark";
}

/** The handle nearest to a place, within reach: they lie closer together than a finger is wide. */
export function nearestHandle(
  handles: readonly Handle[],
  [x, y]: Spot,
  reach: number,
): Handle | undefined {
  const [nearest] = handles
    .map((handle) => ({ handle, away: Math.hypot(handle.at[0] - x, handle.at[1] - y) }))
    .filter(({ away }) => away <= reach)
    .sort((one, other) => one.away - other.away);
  return nearest?.handle;
}

const STEPS: Readonly<Record<string, Spot>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Where an arrow key takes a handle: a step, or with Shift a fifth of one. */
export function afterKey(
  { at }: Handle,
  event: Pick<KeyboardEvent, "key" | "shiftKey">,
  step: number,
): Spot | undefined {
  const way = STEPS[event.key];
  if (way === undefined) return undefined;
  const by = event.shiftKey ? step / 5 : step;
  return [at[0] + by * way[0], at[1] + by * way[1]];
}
