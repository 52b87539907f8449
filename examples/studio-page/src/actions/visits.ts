import type { Basis } from "../appointment/basis.js";
import { today } from "../appointment/day.js";
import { change } from "../appointment/history.js";
import { BY_RULER } from "../appointment/readings.js";
import { weeksSince } from "../page-state.js";
import { goToFace, shotIn } from "./open.js";
import { telling } from "./telling.js";

/** What came of the work, on a photo: pigment and hair together are traced as a brow is. */
export function addPhotoVisit(file: Blob): Promise<void> {
  return telling("lookingForFace", "photoFails", async () => {
    add(await shotIn(file));
  });
}

/** What came of the work, by ruler. */
export function addRulerVisit(): void {
  add(BY_RULER);
}

/** One visit for each time after the work; another one takes its place. */
function add(basis: Basis): void {
  const weeks = Number(weeksSince.value);
  change((now) => {
    const others = now.visits.filter((visit) => visit.weeks !== weeks);
    const visits = [...others, { weeks, basis, date: today() }].sort(
      (one, other) => one.weeks - other.weeks,
    );
    return { ...now, visits, visit: visits.findIndex((visit) => visit.basis === basis) };
  });
  goToFace(basis);
}
