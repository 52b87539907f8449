import type { Sides } from "../../units/index.js";

/**
 * What is read on one side, each entry where it is known.
 *
 * Lengths are millimetres. `Value` is a plain number where uncertainty is left out, and a
 * `Measured` where it is known; readings taken by hand have the same names.
 */
export interface SideMeasures<Value> {
  /** Upper start dot to arch dot, by ruler on the skin. */
  readonly front?: Value;
  /** Arch dot to tail end, by ruler on the skin. */
  readonly tail?: Value;
  /** The front by tape: along the upper border, on the skin. */
  readonly frontAlong?: Value;
  /** The tail by tape: along the upper border, on the skin. */
  readonly tailAlong?: Value;
  /** The front straight, as a frontal photo shows it. */
  readonly frontOnPhoto?: Value;
  /** The tail straight, as a frontal photo shows it. */
  readonly tailOnPhoto?: Value;
  /** Front over front and tail together, by ruler; a share of 0…1. */
  readonly frontShare?: Value;
  /** Upper start dot from the midline. */
  readonly startDistance?: Value;
  /** Upper arch dot from the midline. */
  readonly archDistance?: Value;
  /** Tail end from the midline. */
  readonly tailDistance?: Value;
  /** Upper start dot above the level of the inner eye corners. */
  readonly startHeight?: Value;
  /** Upper arch dot above the level of the inner eye corners. */
  readonly archHeight?: Value;
  /** Tail end above the level of the inner eye corners. */
  readonly tailHeight?: Value;
  /** Upper to lower border at the start. */
  readonly startThickness?: Value;
  /** Upper to lower border half-way between start and arch. */
  readonly bodyThickness?: Value;
  /** Upper to lower border at the arch. */
  readonly archThickness?: Value;
  /** Outer eye corner to tail end, by ruler. */
  readonly exocanthionToTailEnd?: Value;
  /** Upper lid margin to lower border, vertically at the pupil. */
  readonly lidToBrow?: Value;
  /**
   * Angle of the chord from upper start dot to arch dot against the face's horizontal, in degrees,
   * positive where the arch is higher.
   */
  readonly frontInclination?: Value;
  /**
   * Angle of the chord from upper start dot to tail end against the face's horizontal, in degrees,
   * positive where the tail end is higher.
   */
  readonly browInclination?: Value;
  /** Area between the borders, in square millimetres of the frontal view. */
  readonly area?: Value;
}

/** What is read on both sides, and between them. */
export interface FaceMeasures<Value> extends Sides<SideMeasures<Value>> {
  /** Distance between the two upper start dots, by ruler. */
  readonly startToStart?: Value;
}

/** Name of something read on one side. */
export type MeasureName = keyof SideMeasures<unknown>;
