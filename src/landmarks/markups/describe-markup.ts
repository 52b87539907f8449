import type { Measured, Note, NoteValues } from "../../units/index.js";
import { refusingAs, keysOf } from "../../units/internal.js";
import { GUIDES } from "../face/conventions.js";
import type { LandmarkUncertainty, StandIn } from "../face/face.js";
import { LANDMARK_NAMES, type LandmarkName } from "../face/landmarks.js";
import type { IndexTable } from "./index-table.js";
import {
  INDEX_TABLES,
  type LandmarkForms,
  type MarkupName,
  MARKUPS,
  requireMarkup,
} from "./markups.js";
import type { BeyondCode, Lacked } from "./notes.js";

/** Something that cannot be told from a markup, and in its values what the markup lacks for it. */
export interface BeyondMarkup extends Note<BeyondCode> {
  readonly values: NoteValues & { readonly lacks: readonly Lacked[] };
}

/** What a markup gives and what it does not. */
export interface MarkupDescription {
  readonly name: MarkupName;
  /** How many points it has. */
  readonly size: number;
  /** The form in which `fromMarkup` takes them: see {@link MARKUPS}. */
  readonly form: keyof LandmarkForms;
  /** Landmarks it gives, stand-ins included. */
  readonly landmarks: readonly LandmarkName[];
  /** Those of them that it only approximates, with what stands in for each. */
  readonly standIns: readonly StandIn[];
  /** Points to choose from as alare; the first is the usual one. */
  readonly alare: readonly string[];
  /** Landmarks it does not have. */
  readonly missing: readonly LandmarkName[];
  /** What cannot be computed from it for that reason. */
  readonly beyond: readonly BeyondMarkup[];
  readonly uncertainty: LandmarkUncertainty;
  readonly ringFactor: Measured;
  /** `"estimated"` where points may carry depth from a detector's model of a face. */
  readonly depth: "none" | "estimated" | "measured";
}

/**
 * What faces read from a markup contain: its landmarks, which of them are stand-ins, and what
 * cannot be computed from them.
 *
 * @throws GeometryError `out-of-range` for a name that is none of `MARKUP_NAMES`
 *
 * @example
 * ```ts
 * import { describeMarkup } from "brow-geometry/landmarks";
 * import { say } from "brow-geometry/words";
 * const { missing, beyond } = describeMarkup("points-98");
 * missing; // → ["limbusMedial", "limbusLateral", "glabella"]
 * const scale = beyond.find(({ code }) => code === "beyond-iris-scale");
 * scale && say(scale);
 * // → "scale from the width of the iris (no inner edge of the iris, outer edge of the iris)"
 * ```
 */
export function describeMarkup(name: MarkupName): MarkupDescription {
  return refusingAs("describeMarkup", () => {
    requireMarkup(name);
    const { size, form } = MARKUPS[name];
    const table: IndexTable = INDEX_TABLES[name];
    const { standIns, uncertainty, ringFactor, depth } = table;
    const landmarks = landmarksOf(table);
    const alare = Object.keys(table.alare);
    const usual = alare.slice(0, 1).map((instead) => ({ landmark: "alare", instead }) as const);
    const approximated = [...usual, ...standIns];
    return {
      name,
      size,
      form,
      landmarks,
      standIns: approximated,
      alare,
      missing: LANDMARK_NAMES.filter((landmark) => !landmarks.includes(landmark)),
      beyond: beyondOf(
        givenBy(table, landmarks),
        approximated.map(({ landmark }) => landmark),
      ),
      uncertainty,
      ringFactor,
      depth,
    };
  });
}

const LIMBUS = ["limbusMedial", "limbusLateral"] as const;

/** What takes more than the corners of the eyes and the upper border of the brow, besides guides. */
const NEEDS: { readonly [Code in Exclude<BeyondCode, "beyond-guide">]?: readonly Lacked[] } = {
  "beyond-iris-scale": LIMBUS,
  "beyond-thickness": ["lowerBorder"],
  "beyond-lid-to-brow": ["upperLid", "pupil", "lowerBorder"],
  "beyond-fitted-skin": ["depth"],
  "beyond-true-skin": ["measuredDepth"],
  // What a check of the capture looks at.
  "beyond-pupil-distance": ["pupil"],
  "beyond-iris-width": LIMBUS,
  "beyond-yaw": ["depth"],
  "beyond-pitch": ["depth"],
};

/** What cannot be told where these are there, and these of them only by stand-ins. */
function beyondOf(
  given: ReadonlySet<Lacked>,
  approximated: readonly LandmarkName[],
): readonly BeyondMarkup[] {
  const lackedOf = (needs: readonly Lacked[]): readonly Lacked[] =>
    needs.filter((need) => !given.has(need));
  const gaze = approximated.filter((landmark) => landmark === "pupil");
  const all: readonly BeyondMarkup[] = [
    ...keysOf(GUIDES).map((rule) => {
      const { mark, through } = GUIDES[rule];
      return { code: "beyond-guide", values: { mark, rule, lacks: lackedOf(through) } } as const;
    }),
    ...keysOf(NEEDS).map((code) => ({ code, values: { lacks: lackedOf(NEEDS[code] ?? []) } })),
    { code: "beyond-gaze", values: { lacks: given.has("pupil") ? gaze : ["pupil"] } },
    { code: "beyond-stand-ins", values: { lacks: approximated } },
  ];
  return all.filter(({ values }) => values.lacks.length > 0);
}

/** Everything that something may need and that a markup has. */
function givenBy(
  { right, depth }: Pick<IndexTable, "right" | "depth">,
  landmarks: readonly LandmarkName[],
): ReadonlySet<Lacked> {
  const given = new Set<Lacked>(landmarks);
  if (right.browLower !== undefined) given.add("lowerBorder");
  if (depth !== "none") given.add("depth");
  if (depth === "measured") given.add("measuredDepth");
  return given;
}

function landmarksOf({
  right,
  midline,
  irises,
  alare,
}: Pick<IndexTable, "right" | "midline" | "irises" | "alare">): readonly LandmarkName[] {
  const given: ReadonlySet<string> = new Set([
    ...Object.keys(right.points),
    ...Object.keys(midline),
    ...(irises === undefined ? [] : ["pupil", "limbusMedial", "limbusLateral"]),
    ...(Object.keys(alare).length === 0 ? [] : ["alare"]),
    ...(right.upperLid === undefined ? [] : ["upperLid"]),
    ...(right.lowerLid === undefined ? [] : ["lowerLid"]),
    ...(right.browUpper === undefined ? [] : ["brow"]),
  ]);
  return LANDMARK_NAMES.filter((landmark) => given.has(landmark));
}
