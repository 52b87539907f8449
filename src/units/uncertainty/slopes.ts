import type { Coordinate } from "./measured-inputs.js";
import { refuse } from "../quantities/geometry-error.js";
import type { Component } from "./result-components.js";

/** The numbers of a result, component by component; undefined where there is none. */
export type Reading = readonly (number | undefined)[];

/**
 * How fast each component changes with one coordinate: central differences over a step of a share of
 * its uncertainty. Where a component exists on one side only, that side decides.
 */
export function slopesAlong(
  where: string,
  coordinate: Coordinate,
  components: readonly Component[],
  centre: readonly number[],
  share: number,
  readAt: (value: number) => Reading,
): readonly number[] {
  const { value, u, name } = coordinate;
  const step = Math.max(share * u, SHARE_OF_VALUE * Math.abs(value));
  // What is left of the step once it is added: rounding must not count as slope.
  const high = value + step;
  const low = value - step;
  if (u === 0 || high === low) return components.map(() => 0);
  const above = readAt(high);
  const below = readAt(low);
  return components.map((component, index) => {
    const up = above[index];
    const down = below[index];
    if (up !== undefined && down !== undefined) return (up - down) / (high - low);
    if (up !== undefined) return (up - (centre[index] as number)) / (high - value);
    if (down !== undefined) return ((centre[index] as number) - down) / (value - low);
    const need = `a result when ${name} changes by ${step}`;
    refuse("no-solution", where, component.name, undefined, need);
  });
}

/** A step for slopes at the centre: small against the bends of a measure, large against rounding. */
export const AT_CENTRE: number = 2 ** -10;
/** A step for mean slopes: as far as the coordinate is uncertain. */
export const OVER_UNCERTAINTY: number = 1;

/** About the cube root of the rounding of a double, where both errors of a difference balance. */
const SHARE_OF_VALUE = 2 ** -18;
