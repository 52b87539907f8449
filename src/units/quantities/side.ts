/** Both sides of the face, always the client's own, as a frontal picture shows them from left to right. */
export const SIDES = ["right", "left"] as const;

/** A side of the face, always the client's own. */
export type Side = (typeof SIDES)[number];

/** One value for each side of the face. */
export interface Sides<Value> {
  readonly right: Value;
  readonly left: Value;
}

/**
 * One value for each side, made by the same rule.
 *
 * @example
 * ```ts
 * import { eachSide } from "brow-geometry";
 * eachSide((side) => side === "left"); // → { right: false, left: true }
 * ```
 */
export function eachSide<Value>(make: (side: Side) => Value): Sides<Value> {
  return { right: make("right"), left: make("left") };
}

/**
 * The other side.
 *
 * @example
 * ```ts
 * import { otherSide } from "brow-geometry";
 * otherSide("right"); // → "left"
 * ```
 */
export function otherSide(side: Side): Side {
  return side === "right" ? "left" : "right";
}
