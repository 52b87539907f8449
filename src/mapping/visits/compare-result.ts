import { transform } from "../../geometry/index.js";
import { type Brow, type BrowDots, landmarkUncertainty } from "../../landmarks/index.js";
import { mapBrow } from "../../landmarks/internal.js";
import { naturalDots, outline, outlineBorders } from "../../proportions/index.js";
import { compareCaptures, type Displacement, type Registration } from "../../symmetry/index.js";
import { mapDots } from "../../symmetry/internal.js";
import { eachSide, length, type Note, type Side } from "../../units/index.js";
import { keysOf, refuse, refusingAs, requireFinite, SIDES } from "../../units/internal.js";
import { isHair } from "../dots/is-hair.js";
import type { BrowPlan } from "../plan/plan.js";
import { evennessOf } from "./evenness.js";
import { visitNote } from "./notes.js";
import {
  type BrowResult,
  type JudgedOptions,
  type ResultCapture,
  type ResultComparison,
  type ResultOptions,
  type Stage,
  type StageResult,
  STAGES,
} from "./result.js";
import { resultAreas } from "./result-areas.js";
import { thicknessAlong } from "./thickness-along.js";
import { touchUps } from "./touch-ups.js";

/**
 * What came of a plan: each capture of its brows after the work, such as fresh, healed at four to eight weeks
 * and years later, laid over the face of the plan by landmarks that do not move.
 *
 * Per brow how much of the plan is covered, what was lost and what lies outside; thickness along it; how far
 * start and tail end went; how even both brows are, as planned and now; and what a touch-up would fill. The
 * plan's figures are what was asked for, so only the uncertainty of what was found counts, and that of how the
 * captures lie over each other.
 *
 * @throws GeometryError `wrong-count` where there is no capture, `out-of-range` where its weeks are negative,
 * `missing-landmark` where its brows are a detector's guess, which is no pigment;
 * as `compareCaptures` and `naturalDots`
 *
 * @example
 * ```ts
 * import { mm, outline, planBrows, type PlannableFace, say, type Side } from "brow-geometry";
 * import { densify } from "brow-geometry/geometry";
 * import { compareResult } from "brow-geometry/mapping";
 * import { outlineBorders } from "brow-geometry/proportions";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: {
 *     upper: mm([[sign * 17, 20], [sign * 38, 27], [sign * 57, 18]]),
 *     lower: mm([[sign * 17, 13], [sign * 38, 21], [sign * 57, 18]]),
 *   },
 * });
 * const face: PlannableFace = { right: side(-1), left: side(1), midline: {} };
 * const plan = planBrows(face, { tailHeight: "natural" });
 * // As planned, but for the last of the left tail, which faded.
 * const found = (which: Side, end: number) => {
 *   const { upper, lower } = outlineBorders(outline(plan.dots[which]), mm(0.001));
 *   const kept = (line: typeof upper) => densify(line, mm(0.1)).filter(([x]) => Math.abs(x) < end);
 *   return { ...face[which], brow: { upper: kept(upper), lower: kept(lower) } };
 * };
 * const healed = { ...face, right: found("right", 60), left: found("left", 50) };
 * const { results } = compareResult(plan, [{ name: "healed", weeks: 6, face: healed }]);
 * const [result] = results;
 * result?.stage; // → "healed"
 * result?.brows.right.areas?.lost.value; // → 0.0
 * result?.brows.left.tailEnd.ways; // → ["up", "inward"]
 * result?.touchUps.map(({ note }) => say(note));
 * // → ["left, from arch to tail end: fill the end, missing over 7.0 mm, 11 mm²."]
 * ```
 */
export function compareResult(
  plan: BrowPlan,
  captures: readonly ResultCapture[],
  options: ResultOptions = {},
): ResultComparison {
  return refusingAs("compareResult", () => {
    if (captures.length === 0) {
      refuse("wrong-count", "captures", captures, "at least one capture");
    }
    const { tolerances = plan.comparison.tolerances } = options;
    const judged = { ...options, tolerances };
    return {
      planned: evennessOf(plan.dots, undefined, 0, judged),
      results: captures.map((capture, index) => {
        const { weeks } = capture;
        requireFinite(`captures[${index}].weeks`, weeks);
        if (weeks < 0) {
          refuse("out-of-range", `captures[${index}].weeks`, weeks, "0 or more");
        }
        requirePigment(capture.face, index);
        return resultOf(plan, capture, judged);
      }),
    };
  });
}

/** Refuses brows that nobody saw: whatever came of a plan would be read on a detector's template. */
function requirePigment(face: ResultCapture["face"], index: number): void {
  for (const side of SIDES) {
    if (isHair(face, side)) continue;
    const need = "borders by hand or from the picture: a stand-in is no pigment";
    const field = `captures[${index}].face.${side}.brow`;
    refuse("missing-landmark", field, undefined, need);
  }
}

function resultOf(
  plan: BrowPlan,
  { name, weeks, face }: ResultCapture,
  options: JudgedOptions,
): StageResult {
  const borderU = landmarkUncertainty(face, "brow");
  const dots = eachSide((side): BrowDots<"mm"> => naturalDots(face[side].brow).dots);
  const { registration, displacements } = compareCaptures(
    { face: plan.face, dots: plan.dots },
    { face, dots },
    { ...options, dotU: borderU },
  );
  const laid = eachSide((side) =>
    mapBrow(face[side].brow, (point) => transform(point, registration.similarity)),
  );
  const brows = eachSide((side): BrowResult => {
    const { upperStart, tailEnd } = displacements[side] as Ends;
    const ends = { brow: laid[side], start: upperStart, tailEnd };
    const { upper, lower } = laid[side];
    if (lower === undefined) return ends;
    const planned = outline(plan.dots[side], plan.choices.shape);
    return {
      ...ends,
      areas: resultAreas(planned, { upper, lower }, plan.dots[side], registration, borderU),
      thickness: thicknessAlong(
        outlineBorders(planned, STRAYS),
        { upper, lower },
        { borderU, registration },
        options,
      ),
    };
  });
  const stage = stageAt(weeks);
  const early = weeks < STAGES.healed;
  const fills = early
    ? []
    : SIDES.flatMap((side) => fillsOf(plan, laid[side], side, registration, borderU, options));
  return {
    name,
    weeks,
    stage,
    registration,
    brows,
    evenness: evennessOf(
      eachSide((side) => mapDots(dots[side], (point) => transform(point, registration.similarity))),
      registration,
      borderU,
      options,
    ),
    touchUps: [...fills].sort((one, other) => other.area - one.area),
    notes: [
      ...(early
        ? [visitNote("result-too-early", { weeks, least: STAGES.healed, most: STAGES.later })]
        : []),
      ...SIDES.flatMap((side) => notesOf(side, brows[side])),
      ...(registration.note === undefined ? [] : [registration.note]),
      ...(fills.length > 0 ? [visitNote("touch-up-practice")] : []),
    ],
  };
}

interface Ends {
  readonly upperStart: Displacement;
  readonly tailEnd: Displacement;
}

/** How far the borders of the plan may be read off its curves. */
const STRAYS = length(0.001);

/** The last stage whose weeks have come; the eighth week still belongs to a healed result. */
function stageAt(weeks: number): Stage {
  const reached = keysOf(STAGES).filter((stage) =>
    stage === "later" ? weeks > STAGES.later : weeks >= STAGES[stage],
  );
  return reached[reached.length - 1] as Stage;
}

function fillsOf(
  { dots, choices }: BrowPlan,
  { upper, lower }: Brow<"mm">,
  side: Side,
  registration: Registration,
  borderU: number,
  options: JudgedOptions,
): StageResult["touchUps"] {
  if (lower === undefined) return [];
  const found = { side, brow: { upper, lower }, registration, borderU };
  const planned = outline(dots[side], choices.shape);
  return touchUps(planned, dots[side], found, options.tolerances, options);
}

function notesOf(side: Side, { areas }: BrowResult): readonly Note[] {
  if (areas === undefined) return [visitNote("result-areas-unknown", { side })];
  const { value, u } = areas.spread;
  return value > 2 * u ? [visitNote("result-spread", { side, area: value, u })] : [];
}
