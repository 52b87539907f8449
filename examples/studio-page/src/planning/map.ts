import { computed } from "@preact/signals";
import {
  type BrowPlan,
  type Choices,
  planBrows,
  planOnPhoto,
  type PlanOptions,
} from "brow-geometry";
import {
  type GrantedWish,
  type GrantedWishes,
  grantWishes,
  type PlanFinding,
  type Wish,
} from "brow-geometry/mapping";
import { attempt } from "brow-geometry/units";
import { isTraced } from "../appointment/basis.js";
import { isMoving, shown } from "../appointment/history.js";
import { wishesOf } from "../appointment/wishes.js";
import { faceIn, findingsIn, findingsOn, inputOf, type MapInput } from "./input.js";

/** A plan with all that led to it. */
export interface Mapped {
  readonly input: MapInput;
  /** Those of the artist, and what became of the client's wishes. */
  readonly choices: Choices;
  readonly grants: readonly GrantedWish[];
  readonly findings: readonly PlanFinding[];
  readonly plan: BrowPlan;
}

const basis = computed(() => shown.value.map);
const declared = computed(() => shown.value.declared);

/**
 * Kept while only choices change: turning a head to its front takes longer than a plan. Borders that nobody has
 * pulled onto the hair are a guess: nothing is planned from them.
 */
const input = computed(() => {
  const { value } = basis;
  return value === undefined || !isTraced(value) ? undefined : attempt(() => inputOf(value));
});

/** What speaks against the photo of the map; undefined where there is none, or no scale, or a record has kept none. */
export const findings = computed((): readonly PlanFinding[] | undefined => {
  const { value } = basis;
  if (value?.kind === "kept") {
    const warnings = findingsIn(value.record);
    return warnings.length === 0 ? undefined : warnings;
  }
  if (value?.kind !== "photo") return undefined;
  const found = attempt(() => findingsOn(value, declared.value));
  return found.ok ? found.answer : undefined;
});

/** The map, or why there is none; a preview while a finger moves. */
export const map = computed(() => {
  const { value } = input;
  if (value === undefined || !value.ok) return value;
  const { choices, wishes } = shown.value;
  return attempt((): Mapped => {
    const granted = grantedBy(
      value.answer,
      { ...choices, declared: declared.value },
      wishesOf(wishes),
    );
    const against = findings.value ?? [];
    const plan = planned(value.answer, granted.choices, {
      findings: against,
      preview: isMoving.value,
    });
    return { input: value.answer, ...granted, findings: against, plan };
  });
});

/** The artist's choices, and with them as much of the client's wishes as the face allows. */
export function grantedBy(
  input: MapInput,
  choices: Choices,
  wishes: readonly Wish[],
): GrantedWishes {
  return wishes.length === 0
    ? { choices, grants: [] }
    : grantWishes(faceIn(input), wishes, choices);
}

export function planned(input: MapInput, choices: Choices, options: PlanOptions): BrowPlan {
  return input.kind === "face"
    ? planBrows(input.face, choices, options)
    : planOnPhoto(input.photo, input.frame, choices, options);
}

/** The map where there is one. */
export const mapped = computed(() => (map.value?.ok === true ? map.value.answer : undefined));

/** The map under the finger: where there is none, the last that there was. */
export const inHand = computed((): Mapped | undefined => {
  lastInHand = mapped.value ?? lastInHand;
  return lastInHand;
});

/** The map before a finger took hold: views hold still, and dots are dragged, by it. */
export const atRest = computed((): Mapped | undefined => {
  if (!isMoving.value) lastAtRest = mapped.value;
  return lastAtRest;
});

let lastInHand: Mapped | undefined;
let lastAtRest: Mapped | undefined;
