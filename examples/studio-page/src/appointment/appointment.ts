import type { Choices } from "brow-geometry";
import type { Declared } from "brow-geometry/landmarks";
import type { DrawnArea } from "./area.js";
import { type Basis, type Picture, pictureOf } from "./basis.js";
import type { Wishes } from "./wishes.js";

/** Brows as they were found some weeks after the work. */
export interface Visit {
  readonly weeks: number;
  /** The day of it, year first; records of other programs may not know it. */
  readonly date: string | undefined;
  readonly basis: Basis;
}

/** That a client has agreed. */
export interface Agreed {
  /** The day on which she did, year first, where it is known. */
  readonly on: string | undefined;
}

/** All that was entered: every change makes a new one, and undo goes back to the one before. */
export interface Appointment {
  /** What the map is made from; without it nothing has begun. */
  readonly map?: Basis;
  readonly choices: Choices;
  readonly wishes: Wishes;
  readonly declared: Declared;
  /** Whether the client has agreed to the map as it stands. */
  readonly agreed: Agreed | undefined;
  /** Ruler checks that were ticked, by their place in the list. */
  readonly ticked: readonly number[];
  readonly areas: readonly DrawnArea[];
  readonly visits: readonly Visit[];
  /** The visit that is being entered; without it the map is. */
  readonly visit?: number;
}

export const EMPTY: Appointment = {
  choices: {},
  wishes: {},
  declared: {},
  agreed: undefined,
  ticked: [],
  areas: [],
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
  const { map, visits, visit } = appointment;
  if (visit === undefined) {
    // What was drawn on another picture says nothing about this one.
    const areas = pictureIn(map) === pictureIn(basis) ? appointment.areas : [];
    return { ...appointment, map: basis, areas, agreed: undefined, ticked: [] };
  }
  return {
    ...appointment,
    visits: visits.map((one, index) => (index === visit ? { ...one, basis } : one)),
  };
}

function pictureIn(basis: Basis | undefined): Picture | undefined {
  return basis && pictureOf(basis);
}

/** The same with other choices or wishes. What was agreed was another map. */
export function withChoices(
  appointment: Appointment,
  changed: Partial<Pick<Appointment, "choices" | "wishes" | "declared">>,
): Appointment {
  return { ...appointment, ...changed, agreed: undefined, ticked: [] };
}
