import { DOT_NAMES } from "../../landmarks/internal.js";
import { compareCaptures } from "../../symmetry/index.js";
import { GeometryError, type Note } from "../../units/index.js";
import { refusingAs, SIDES, unlessRefused } from "../../units/internal.js";
import type { BrowPlan } from "../plan/plan.js";
import { type EarlierRecord, type MapRecord, replay, visitsOf } from "../record/map-record.js";
import { whyNot } from "../weighing/why-not.js";
import { visitNote } from "./notes.js";

/**
 * What does not fit in a chain of visits, a record with the records before it: a visit without a date or before
 * an earlier one, a plan that its record does not give again, a face whose eye corners and nose are not those of
 * the first visit, a visit to which nobody is on record to have agreed. Empty where all of it fits.
 *
 * @throws GeometryError as `replay`, for a version that this library does not know
 *
 * @example
 * ```ts
 * import { mm, recordOf, say } from "brow-geometry";
 * import { checkVisits, visitsOf } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 15, 20], [sign * 38, 27], [sign * 57, 18]]) },
 * });
 * const input = { kind: "face", face: { right: side(-1), left: side(1), midline: {} } } as const;
 * const agreement = [{ kind: "agreed", text: "the map, as drawn" }] as const;
 * const first = recordOf(input, {}, { date: "2026-03-14", agreement });
 * const second = recordOf(input, {}, { date: "2025-04-25", agreement, earlier: visitsOf(first) });
 * checkVisits(second).map((note) => say(note));
 * // → ["Visit 2 is dated 2025-04-25, before an earlier one of 2026-03-14."]
 * ```
 */
export function checkVisits(record: MapRecord): readonly Note[] {
  return refusingAs("checkVisits", () => notesOf(record));
}

function notesOf(record: MapRecord): readonly Note[] {
  const visits = visitsOf(record);
  const [first] = visits;
  let latest = "";
  return visits.flatMap((visit, index) => {
    const number = index + 1;
    const before = latest;
    if (visit.date !== undefined && visit.date > latest) latest = visit.date;
    return [
      ...whenOf(visit, number, before),
      ...replayOf(visit, number),
      ...(first === undefined || index === 0 ? [] : faceOf(first, visit, number)),
      ...(visit.agreement?.some(({ kind }) => kind === "agreed")
        ? []
        : [visitNote("visit-not-agreed", { visit: number })]),
    ];
  });
}

/** Days written year first come in the order of their text. */
function whenOf({ date }: EarlierRecord, visit: number, before: string): readonly Note[] {
  if (date === undefined) return [visitNote("visit-undated", { visit })];
  return date < before ? [visitNote("visit-out-of-order", { visit, date, before })] : [];
}

function replayOf(record: EarlierRecord, visit: number): readonly Note[] {
  try {
    return isSame(replay(record), record.plan)
      ? []
      : [visitNote("visit-replays-differently", { visit })];
  } catch (error) {
    if (!(error instanceof GeometryError) || error.detail.field === "version") throw error;
    return [visitNote("visit-not-replayed", { visit, refusal: whyNot(error) })];
  }
}

/** Dots that lie nearer to each other than this are one, in mm: no two machines round alike. */
const SAME_PLACE = 1e-6;

function isSame(one: BrowPlan, other: BrowPlan): boolean {
  return SIDES.every((side) =>
    DOT_NAMES.every((dot) => {
      const [from, to] = [one.dots[side][dot], other.dots[side][dot]];
      return Math.hypot(to[0] - from[0], to[1] - from[1]) < SAME_PLACE;
    }),
  );
}

function faceOf(first: EarlierRecord, later: EarlierRecord, visit: number): readonly Note[] {
  const dots = { right: {}, left: {} };
  const comparison = unlessRefused(
    () => compareCaptures({ face: first.plan.face, dots }, { face: later.plan.face, dots }),
    (code) => code === "missing-landmark",
  );
  const finding = comparison?.registration.note;
  return finding === undefined ? [] : [visitNote("visit-face-differs", { visit, finding })];
}
