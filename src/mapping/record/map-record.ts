import type { FaceFrame } from "../../symmetry/index.js";
import { refuse, refusingAs, requireObject, requireWord } from "../../units/internal.js";
import type { Choices } from "../choices/choices.js";
import type { DrawnCheck } from "../drawn/deviation.js";
import type { PlanFinding } from "../plan/cautions.js";
import { MAP_VERSION } from "../plan/map-version.js";
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

/** What a client was shown, agreed to or asked for. */
export interface Agreement extends RecordNote {
  readonly kind: (typeof AGREEMENTS)[number];
}

/** All kinds of agreement. */
export const AGREEMENTS = ["shown", "agreed", "asked-for"] as const;

/** A day as records write it, year first: one that its month has; every February has 29. */
export const CALENDAR_DAY: RegExp =
  /^\d{4}-(?!02-3|(0[469]|11)-31)(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;

/** What belongs to a record besides the plan. */
export interface RecordExtras {
  /** The day of the visit, year first: "2026-03-14". */
  readonly date?: string;
  /** Who mapped, and where. */
  readonly artist?: string;
  readonly place?: string;
  readonly agreement?: readonly Agreement[];
  /** The records of the visits before, the first of them first: see {@link visitsOf}. */
  readonly earlier?: readonly EarlierRecord[];
  /** What was drawn against the plan. */
  readonly check?: DrawnCheck;
  readonly notes?: readonly RecordNote[];
  /** What an app keeps with a map for itself, for JSON: carried along unread. */
  readonly app?: unknown;
}

/**
 * A map that can be kept: what it was made from, what was chosen, what came of it, how that was drawn.
 * Plain data for JSON; who pinned which dot and why stands in `choices`, the reasons in `plan`.
 */
export interface MapRecord extends RecordExtras {
  readonly version: typeof MAP_VERSION;
  readonly input: MapInput;
  /** As they were made; what followed from them where nothing was chosen is in `plan.choices`. */
  readonly choices: Choices;
  readonly plan: BrowPlan;
  readonly notes: readonly RecordNote[];
}

/** A record without those before it. */
export type EarlierRecord = Omit<MapRecord, "earlier">;

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
 * record.version; // → 2
 * replay(record).dots.left.upperStart[0] === record.plan.dots.left.upperStart[0]; // → true
 * ```
 */
export function recordOf(
  input: MapInput,
  choices: Choices = {},
  { notes = [], findings = [], ...extras }: RecordExtras & PlanOptions = {},
): MapRecord {
  return refusingAs("recordOf", () => {
    const { date, artist, place, agreement, check, earlier, app } = extras;
    if (date !== undefined && !CALENDAR_DAY.test(date)) {
      refuse("out-of-range", "date", date, "a day, year first, such as 2026-03-14");
    }
    return {
      version: MAP_VERSION,
      ...(date === undefined ? {} : { date }),
      ...(artist === undefined ? {} : { artist }),
      ...(place === undefined ? {} : { place }),
      ...(agreement === undefined ? {} : { agreement }),
      input,
      choices,
      plan: planFrom(input, choices, { findings }),
      ...(check === undefined ? {} : { check }),
      notes,
      ...(earlier === undefined ? {} : { earlier }),
      ...(app === undefined ? {} : { app }),
    };
  });
}

/**
 * The visits of a record, the first of them first and the record itself last: what the record of the next
 * visit takes as `earlier`.
 *
 * @example
 * ```ts
 * import { mm, recordOf } from "brow-geometry";
 * import { visitsOf } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 15, 20], [sign * 38, 27], [sign * 57, 18]]) },
 * });
 * const input = { kind: "face", face: { right: side(-1), left: side(1), midline: {} } } as const;
 * const first = recordOf(input, {}, { date: "2026-03-14" });
 * const second = recordOf(input, {}, { date: "2026-04-25", earlier: visitsOf(first) });
 * visitsOf(second).map(({ date }) => date); // → ["2026-03-14", "2026-04-25"]
 * ```
 */
export function visitsOf({ earlier = [], ...record }: MapRecord): readonly EarlierRecord[] {
  return [...earlier, record];
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
 * const newer = { version: 3 } as unknown as MapRecord;
 * replay(newer); // throws GeometryError: replay: version is 3; needs 2
 * ```
 */
export function replay(record: MapRecord): BrowPlan {
  return refusingAs("replay", () => {
    const { version, input, choices }: Omit<MapRecord, "version"> & { readonly version: number } =
      record;
    if (version !== MAP_VERSION) {
      const need = `${MAP_VERSION}, the version of records that this library knows`;
      refuse("out-of-range", "version", version, need);
    }
    // What the plan was told of the capture is kept among the cautions only.
    const findings = record.plan.cautions.flatMap(({ finding, values }) =>
      finding === undefined ? [] : { ...finding, ...(values as Pick<PlanFinding, "severity">) },
    );
    return planFrom(input, choices, { findings });
  });
}

function planFrom(input: MapInput, choices: Choices, options: PlanOptions): BrowPlan {
  requireObject("input", input, 'an object with kind "face" or "photo"');
  requireWord("input.kind", (input as Partial<MapInput>).kind ?? "", ["face", "photo"]);
  switch (input.kind) {
    case "face":
      return planBrows(input.face, choices, options);
    case "photo":
      return planOnPhoto(input.photo, input.frame, choices, options);
  }
}
