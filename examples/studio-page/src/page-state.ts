import { signal } from "@preact/signals";

export const TABS = ["face", "map", "shape", "check", "keep"] as const;

export type Tab = (typeof TABS)[number];

/** Where on the page somebody is; no part of an appointment, and never undone. */
export const tab = signal<Tab>("face");

/** What the face is touched for while it is entered. */
export const entering = signal<"eyes" | "right" | "left" | "ruler">("right");

/** Whether guides and lengths are drawn. */
export const linesShown = signal(false);

/** What was last said to the artist, beneath the picture. */
export const said = signal("");

/** What takes long and goes on just now. */
export const busy = signal("");

/** How long after the work the next visit to be compared is. */
export const weeksSince = signal<"0" | "2" | "6" | "52">("6");
