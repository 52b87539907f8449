/**
 * Beyond what no brow is drawn without a second look: a limit for every finding, angles in degrees, the rest
 * in millimetres.
 */
export interface ShapeLimits {
  /** How steeply the tail falls from the arch to its end. */
  readonly "tail-steep": number;
  /** How steeply the front rises from the start to the arch. */
  readonly "front-steep": number;
  /** How far the tail ends above the middle of the arch, from where both borders would fall to it. */
  readonly "tail-above-arch": number;
  /** How far the tail ends below the lower start dot. */
  readonly "tail-below-start": number;
  /** How much thicker a brow grows from one station to the next, from the front outward. */
  readonly "thickens-outward": number;
  /** By how much the space between lid and brow, above the pupil, closes against what grows. */
  readonly "lid-space-closes": number;
  /**
   * How far a border lies from the hair's in the same place; where it starts or ends sideways, too. A tail that
   * is added where hair is missing counts from 39 mm beyond the inner corner of the eye.
   */
  readonly "dot-far-off": number;
}

/**
 * The limits where nothing else is chosen. That a tail neither ends above the middle of the arch nor far below the start,
 * and that a brow does not thicken outward, is trade practice, no source; the figures are ours. 98 of 100
 * brows of 102 faces drawn by hand fall and rise less steeply (DeBruine & Jones, Face Research Lab London
 * Set, doi 10.6084/m9.figshare.5047666.v5, CC BY 4.0).
 */
export const SHAPE_LIMITS: ShapeLimits = {
  "tail-steep": 60,
  "front-steep": 25,
  "tail-above-arch": 0,
  "tail-below-start": 6,
  "thickens-outward": 0.5,
  "lid-space-closes": 4,
  "dot-far-off": 12,
};
