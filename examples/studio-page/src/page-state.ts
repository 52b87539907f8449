import { signal } from "@preact/signals";
import type { Aim } from "./appointment/area.js";

export const TABS = ["face", "map", "shape", "check", "keep"] as const;

export type Tab = (typeof TABS)[number];

/** Where on the page somebody is; no part of an appointment, and never undone. */
export const tab = signal<Tab>("face");

/** What the face is touched for while it is entered. */
export const entering = signal<"faces" | "eyes" | "right" | "left" | "ruler">("right");

/** Whether guides and lengths are drawn. */
export const linesShown = signal(false);

/** What the area is for that is just drawn on the map; undefined where a touch means a dot. */
export const drawingFor = signal<Aim | undefined>(undefined);

/** What was last said to the artist, beneath the picture. */
export const said = signal("");

/** What takes long and goes on just now. */
export const busy = signal("");

/** How long after the work the next visit to be compared is. */
export const weeksSince = signal<Weeks>("6");

const WEEKS = ["0", "2", "6", "52"] as const;
export type Weeks = (typeof WEEKS)[number];

/** The visit that is due after so many weeks. */
export function visitNearest(weeks: number): Weeks {
  const away = (one: Weeks) => Math.abs(Number(one) - weeks);
  return [...WEEKS].sort((one, other) => away(one) - away(other))[0] ?? "6";
}
