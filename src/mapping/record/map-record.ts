import type { FaceFrame } from "../../symmetry/index.js";
import { refuse, refusingAs } from "../../units/internal.js";
import type { Choices } from "../choices/choices.js";
import type { DrawnCheck } from "../drawn/deviation.js";
import type { BrowPlan } from "../plan/plan.js";
import { planBrows, planOnPhoto, type PlanOptions } from "../plan/plan-brows.js";
import type { PlannableFace } from "../dots/plannable-face.js";

/** What a plan was made from: a face in millimetres, or one on a photo with its midline and scale. */
export type MapInput =
  | { readonly kind: "face"; readonly face: PlannableFace }
  | { readonly kind: "photo"; readonly photo: PlannableFace<"px">; readonly frame: FaceFrame };

/** A remark to be kept with a map. */
export interface RecordNote {
  readonly text: string;
  /** Who says so. */
  readonly by?: string;
}

/** What belongs to a record besides the plan. */
export interface RecordExtras {
  /** What was drawn against the plan. */
  readonly check?: DrawnCheck;
  readonly notes?: readonly RecordNote[];
}

/**
 * A map that can be kept: what it was made from, what was chosen, what came of it, how that was drawn.
 * Plain data for JSON; who pinned which dot and why stands in `choices`, the reasons in `plan`.
 */
export interface MapRecord extends RecordExtras {
  readonly version: typeof RECORD_VERSION;
  readonly input: MapInput;
  /** As they were made; what followed from them where nothing was chosen is in `plan.choices`. */
  readonly choices: Choices;
  readonly plan: BrowPlan;
  readonly notes: readonly RecordNote[];
}

/** The version of records that this library writes and reads. */
export const RECORD_VERSION = 1;

/**
 * Plans brows and keeps everything that led there.
 *
 * @throws GeometryError as {@link planBrows} and {@link planOnPhoto}
 *
 * @example
 * ```ts
 * import { mm, recordOf, replay } from "brow-geometry";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 15, 20], [sign * 38, 27], [sign * 57, 18]]) },
 * });
 * const face = { right: side(-1), left: side(1), midline: {} };
 * const record = recordOf({ kind: "face", face }, { lead: "left" }, { notes: [{ text: "first visit" }] });
 * record.version; // → 1
 * replay(record).dots.left.upperStart[0] === record.plan.dots.left.upperStart[0]; // → true
 * ```
 */
export function recordOf(
  input: MapInput,
  choices: Choices = {},
  { check, notes = [], findings = [] }: RecordExtras & PlanOptions = {},
): MapRecord {
  return {
    version: RECORD_VERSION,
    input,
    choices,
    plan: refusingAs("recordOf", () => planFrom(input, choices, { findings })),
    ...(check === undefined ? {} : { check }),
    notes,
  };
}

/**
 * Plans once more what a record was made from. The same version of the library returns the recorded
 * plan, to the last bit, even where the record went through JSON.
 *
 * @throws GeometryError `out-of-range` for a version that this library does not know; as {@link
 * recordOf}
 *
 * @example
 * ```ts
 * import { type MapRecord, replay } from "brow-geometry";
 * const newer = { version: 2 } as unknown as MapRecord;
 * replay(newer); // throws GeometryError: replay: version is 2; needs 1
 * ```
 */
export function replay(record: MapRecord): BrowPlan {
  const { version, input, choices }: Omit<MapRecord, "version"> & { readonly version: number } =
    record;
  if (version !== RECORD_VERSION) {
    const need = `${RECORD_VERSION}, the version of records that this library knows`;
    refuse("out-of-range", "replay", "version", version, need);
  }
  // What the plan was told of the capture is kept among the cautions only.
  const findings = record.plan.cautions.flatMap(({ finding }) => finding ?? []);
  return refusingAs("replay", () => planFrom(input, choices, { findings }));
}

function planFrom(input: MapInput, choices: Choices, options: PlanOptions): BrowPlan {
  switch (input.kind) {
    case "face":
      return planBrows(input.face, choices, options);
    case "photo":
      return planOnPhoto(input.photo, input.frame, choices, options);
  }
}
