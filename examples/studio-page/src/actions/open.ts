import { type Appointment, EMPTY, withBasis } from "../appointment/appointment.js";
import type { Basis, Shot } from "../appointment/basis.js";
import { today, weeksBetween } from "../appointment/day.js";
import { begin, change, kept } from "../appointment/history.js";
import { BY_RULER } from "../appointment/readings.js";
import { readRecord } from "../appointment/record-file.js";
import { entering, said, tab, visitNearest, weeksSince } from "../page-state.js";
import { exampleShot } from "../photo/example.js";
import { findFaces } from "../photo/find-face.js";
import { handShot } from "../photo/hand-shot.js";
import { openPicture } from "../photo/open-photo.js";
import { shotOf } from "../photo/shot.js";
import { telling } from "./telling.js";
import { text } from "../words/language.js";

/** A photo for what is entered just now: a map, a better photo for it, or a visit. */
export function openPhoto(file: Blob): Promise<void> {
  return telling("lookingForFace", "photoFails", async () => {
    const shot = await shotIn(file);
    enter(shot);
  });
}

/** A face on a photo; placed by hand where the face finder sees none. */
export async function shotIn(file: Blob): Promise<Shot> {
  const picture = await openPicture(file);
  const faces = await findFaces(picture).catch(() => []);
  const [found] = faces;
  if (found !== undefined) {
    const shot = shotOf(found, { kind: "irises" }, picture);
    return faces.length === 1 ? shot : { ...shot, faces };
  }
  said.value = text.value.noFace;
  return handShot(picture);
}

/** A face read by ruler alone. */
export function openPlainFace(): void {
  enter(BY_RULER);
}

/** The face that comes with the library. */
export function openExample(): Promise<void> {
  return telling("openingExample", "exampleFails", async () => {
    start({ ...EMPTY, map: await exampleShot() });
    tab.value = "map";
    said.value = text.value.exampleDrawn;
  });
}

/** A record that this page, or another program of the library, has kept. */
export function openRecord(file: Blob): Promise<void> {
  return telling("opening", "recordFails", async () => {
    const appointment = await readRecord(file);
    start(appointment);
    tab.value = "map";
    // A record is opened again when its client comes back.
    const { map } = appointment;
    const day = map?.kind === "kept" ? map.record.date : undefined;
    if (day !== undefined) weeksSince.value = visitNearest(weeksBetween(day, today()));
  });
}

/** Another client: nothing of the one before stays on the page. */
export function startAgain(): void {
  start(EMPTY);
}

function start(appointment: Appointment): void {
  begin(appointment);
  entering.value = "right";
  said.value = "";
}

/** The first face begins an appointment; another one takes its place. */
export function enter(basis: Basis): void {
  if (kept.value.map === undefined) begin({ ...EMPTY, map: basis });
  else change((now) => withBasis(now, basis));
  goToFace(basis);
}

/** To the face, where entering it begins: eyes that were not found come before brows. */
export function goToFace(basis: Basis | undefined): void {
  entering.value = basis?.kind === "photo" ? firstOn(basis) : "right";
  tab.value = "face";
}

function firstOn(shot: Shot): "faces" | "eyes" | "right" {
  if (shot.faces !== undefined) return "faces";
  return isByHand(shot) ? "eyes" : "right";
}

/** Whether somebody placed the landmarks; a face finder says which markup it has. */
export function isByHand({ found }: Shot): boolean {
  return found.source === undefined;
}
