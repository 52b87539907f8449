import type { Face } from "brow-geometry";
import { basisAtHand, withBasis, withoutVisit } from "../appointment/appointment.js";
import type { Shot } from "../appointment/basis.js";
import { change, kept } from "../appointment/history.js";
import { BY_RULER } from "../appointment/readings.js";
import { entering, tab } from "../page-state.js";
import { shotOf } from "../photo/shot.js";
import { enter, goToFace } from "./open.js";

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

/** Another of several faces on a photo. */
export function chooseFace(shot: Shot, face: Face<"px">): void {
  const { picture, faces = [] } = shot;
  change((now) => withBasis(now, { ...shotOf(face, { kind: "irises" }, picture), faces }));
  entering.value = "right";
}

/** The readings are all in. */
export function finishReadings(): void {
  finish();
}

/** The face at hand by ruler alone, where a photo will not do. */
export function changeToRuler(): void {
  enter(BY_RULER);
}

/** The map by ruler alone, whichever visit is just entered. */
export function changeMapToRuler(): void {
  change((now) => withBasis(withoutVisit(now), BY_RULER));
  goToFace(BY_RULER);
}

/** From why there is no map to its face, or to the ruler on its photo. */
export function goToMapFace(needsRuler: boolean): void {
  change(withoutVisit);
  goToFace(kept.value.map);
  if (needsRuler) entering.value = "ruler";
}

/** From a face to its map, or from that of a visit back to what came of it. */
function finish(): void {
  const isVisit = kept.value.visit !== undefined;
  change(withoutVisit);
  tab.value = isVisit ? "keep" : "map";
}
