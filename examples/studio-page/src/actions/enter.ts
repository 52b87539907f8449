import { basisAtHand, withBasis } from "../appointment/appointment.js";
import { change, kept } from "../appointment/history.js";
import { PLAIN_FACE } from "../appointment/readings.js";
import { entering, tab } from "../page-state.js";
import { enter } from "./open.js";

/** A brow's borders lie on its hair: on to the other one, then to the map. */
export function finishBrow(): void {
  const side = entering.value === "left" ? "left" : "right";
  const basis = basisAtHand(kept.value);
  if (basis?.kind !== "photo") return;
  const traced = { ...basis.traced, [side]: true };
  change((now) => withBasis(now, { ...basis, traced }));
  if (!traced.left) entering.value = "left";
  else if (!traced.right) entering.value = "right";
  else finish();
}

/** The readings are all in. */
export function finishReadings(): void {
  finish();
}

/** The face at hand by ruler alone, where a photo will not do. */
export function changeToRuler(): void {
  enter({ kind: "ruler", readings: PLAIN_FACE });
}

/** From a face to its map, or from that of a visit back to what came of it. */
function finish(): void {
  const isVisit = kept.value.visit !== undefined;
  if (isVisit) {
    change(({ visit: _, ...now }) => now);
  }
  tab.value = isVisit ? "keep" : "map";
}
