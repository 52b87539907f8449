import { signal } from "@preact/signals";
import type { FlatPoint } from "brow-geometry/units";

/** The first of two taps on a ruler; no part of the appointment until the second one. */
export const firstMark = signal<FlatPoint<"px"> | undefined>(undefined);
