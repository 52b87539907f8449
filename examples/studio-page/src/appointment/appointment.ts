import type { Choices } from "brow-geometry";
import type { Declared } from "brow-geometry/landmarks";
import type { Basis } from "./basis.js";
import type { Wishes } from "./wishes.js";

/** Brows as they were found some weeks after the work. */
export interface Visit {
  readonly weeks: number;
  readonly basis: Basis;
}

/** All that was entered: every change makes a new one, and undo goes back to the one before. */
export interface Appointment {
  /** What the map is made from; without it nothing has begun. */
  readonly map?: Basis;
  readonly choices: Choices;
  readonly wishes: Wishes;
  readonly declared: Declared;
  /** The client has agreed to the map as it stands. */
  readonly agreed: boolean;
  /** Ruler checks that were ticked, by their place in the list. */
  readonly ticked: readonly number[];
  readonly visits: readonly Visit[];
  /** The visit that is being entered; without it the map is. */
  readonly visit?: number;
}

export const EMPTY: Appointment = {
  choices: {},
  wishes: {},
  declared: {},
  agreed: false,
  ticked: [],
  visits: [],
};

/** The face that is being entered: the map's, or that of a later visit. */
export function basisAtHand({ map, visits, visit }: Appointment): Basis | undefined {
  return visit === undefined ? map : visits[visit]?.basis;
}

/** The same with the map at hand again, whichever visit was. */
export function withoutVisit(appointment: Appointment): Appointment {
  const { visit, ...others } = appointment;
  return visit === undefined ? appointment : others;
}

/** The same with another face where the one at hand was. A new map is neither agreed nor checked. */
export function withBasis(appointment: Appointment, basis: Basis): Appointment {
  const { visits, visit } = appointment;
  if (visit === undefined) return { ...appointment, map: basis, agreed: false, ticked: [] };
  return {
    ...appointment,
    visits: visits.map((one, index) => (index === visit ? { ...one, basis } : one)),
  };
}

/** The same with other choices or wishes. What was agreed was another map. */
export function withChoices(
  appointment: Appointment,
  changed: Partial<Pick<Appointment, "choices" | "wishes" | "declared">>,
): Appointment {
  return { ...appointment, ...changed, agreed: false, ticked: [] };
}
