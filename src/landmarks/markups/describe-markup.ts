import type { Measured } from "../../units/index.js";
import { GUIDES } from "../face/conventions.js";
import type { LandmarkUncertainty, StandIn } from "../face/face.js";
import { LANDMARK_NAMES, type LandmarkName } from "../face/landmarks.js";
import type { IndexTable } from "./index-table.js";
import { INDEX_TABLES } from "./tables-by-name.js";
import {
  type LandmarkForms,
  type MarkupName,
  MARKUP_TITLES,
  MARKUPS,
  requireMarkup,
} from "./markups.js";

/** Something that cannot be told from a markup, and what it would take. */
export interface BeyondMarkup {
  readonly what: string;
  /** A landmark `"of its own"` is one for which nothing stands in. */
  readonly lacks: readonly (
    | LandmarkName
    | `${LandmarkName} of its own`
    | "lower border of the brow"
    | "depth"
    | "measured depth"
  )[];
}

/** What a markup gives and what it does not. */
export interface MarkupDescription {
  readonly name: MarkupName;
  readonly title: string;
  /** How many points it has. */
  readonly size: number;
  /** The form in which `fromMarkup` takes them: see {@link MARKUPS}. */
  readonly form: keyof LandmarkForms;
  /** Landmarks it gives, stand-ins included. */
  readonly landmarks: readonly LandmarkName[];
  /** Those of them that it only approximates, with what stands in for each. */
  readonly standIns: readonly StandIn[];
  /** Points to choose from as alare; the first is the usual one. */
  readonly alare: readonly { readonly name: string; readonly instead: string }[];
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
 * import { describeMarkup } from "brow-geometry";
 * const { missing, beyond } = describeMarkup("points-68");
 * missing; // → ["limbusMedial", "limbusLateral", "glabella"]
 * beyond[0]; // → { what: "scale from the width of the iris", lacks: ["limbusMedial", "limbusLateral"] }
 * ```
 */
export function describeMarkup(name: MarkupName): MarkupDescription {
  requireMarkup("describeMarkup", name);
  const { size, form } = MARKUPS[name];
  const table: IndexTable = INDEX_TABLES[name];
  const { standIns, uncertainty, ringFactor, depth } = table;
  const landmarks = landmarksOf(table);
  const alare = Object.entries(table.alare).map(([choice, { instead }]) => ({
    name: choice,
    instead,
  }));
  const usual = alare.slice(0, 1).map(({ instead }) => ({ landmark: "alare", instead }) as const);
  const approximated = [...usual, ...standIns];
  const given = givenBy(table, landmarks, approximated, depth);
  const atStandIns = {
    what: "what lies at the landmark itself, where a stand-in is read",
    needs: approximated.map(({ landmark }) => `${landmark} of its own` as const),
  };
  return {
    name,
    title: MARKUP_TITLES[name],
    size,
    form,
    landmarks,
    standIns: approximated,
    alare,
    missing: LANDMARK_NAMES.filter((landmark) => !landmarks.includes(landmark)),
    beyond: [...NEEDS, atStandIns]
      .map(({ what, needs }) => ({ what, lacks: needs.filter((need) => !given.has(need)) }))
      .filter(({ lacks }) => lacks.length > 0),
    uncertainty,
    ringFactor,
    depth,
  };
}

type Need = BeyondMarkup["lacks"][number];

const LIMBUS = ["limbusMedial", "limbusLateral"] as const;

/** What takes more than the corners of the eyes and the upper border of the brow. */
const NEEDS: readonly { readonly what: string; readonly needs: readonly Need[] }[] = [
  { what: "scale from the width of the iris", needs: LIMBUS },
  ...Object.values(GUIDES).map(({ mark, words, through }) => ({
    what: `${mark} ${words}`,
    needs: through,
  })),
  {
    what: "thickness, area and lower dots of the natural brow",
    needs: ["lower border of the brow"],
  },
  {
    what: "height of the brow over the lid",
    needs: ["upperLid", "pupil", "lower border of the brow"],
  },
  { what: "skin fitted to the face, and turning a head to the front", needs: ["depth"] },
  { what: "skin as it is, and not as it is modelled", needs: ["measured depth"] },
  // What a check of the capture looks at.
  { what: "whether the eyes look ahead", needs: ["pupil of its own"] },
  { what: "distance of the pupils", needs: ["pupil"] },
  { what: "whether the irises are equal, and as wide as people's", needs: LIMBUS },
  { what: "whether the head is turned or the face uneven", needs: ["depth"] },
  { what: "whether the chin is raised or lowered", needs: ["depth"] },
];

function givenBy(
  { right }: Pick<IndexTable, "right">,
  landmarks: readonly LandmarkName[],
  standIns: readonly StandIn[],
  depth: MarkupDescription["depth"],
): ReadonlySet<Need> {
  const themselves = landmarks.filter(
    (name) => !standIns.some(({ landmark }) => landmark === name),
  );
  return new Set<Need>([
    ...landmarks,
    ...themselves.map((landmark) => `${landmark} of its own` as const),
    ...(right.browLower === undefined ? [] : (["lower border of the brow"] as const)),
    ...(depth === "none" ? [] : (["depth"] as const)),
    ...(depth === "measured" ? (["measured depth"] as const) : []),
  ]);
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
