import { computed, signal } from "@preact/signals";
import type { FlatPoint } from "brow-geometry/units";
import { basisAtHand } from "../appointment/appointment.js";
import { pictureOf } from "../appointment/basis.js";
import { kept } from "../appointment/history.js";
import { entering } from "../page-state.js";

/** The first of two taps on a ruler; no part of the appointment until the second one. */
export const firstMark = signal<FlatPoint<"px"> | undefined>(undefined);

const picture = computed(() => {
  const basis = basisAtHand(kept.value);
  return basis && pictureOf(basis);
});

/** A mark belongs to its photo, and to what was begun there. */
function forget(): void {
  firstMark.value = undefined;
}

picture.subscribe(forget);
entering.subscribe(forget);
