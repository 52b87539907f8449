import { mapFace } from "../../landmarks/index.js";
import type { FaceFrame } from "../../symmetry/index.js";
import { comparisonOf, ontoFace } from "../../symmetry/internal.js";
import { WORKING_TOLERANCES } from "../../units/index.js";
import { refusingAs, requireNames, requireObject } from "../../units/internal.js";
import { cautionsFor, type PlanFinding, requireSize } from "./cautions.js";
import type { Choices } from "../choices/choices.js";
import { decideShares } from "./decide-shares.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import type { BrowPlan } from "./plan.js";
import { planAcross, planDots, readFace } from "../dots/plan-dots.js";
import { findingsOf } from "../shape/shape-findings.js";
import type { ShapeLimits } from "../shape/shape-limits.js";
import { MAP_VERSION } from "./map-version.js";
import { causesOnFace, causesOnPhoto } from "./plan-causes.js";
import { type Cause, readPlan } from "./read-plan.js";
import { onlyRead, type Variation } from "./variation.js";
import { type PlannableFace, requirePlannable } from "../dots/plannable-face.js";

/** What a plan takes into account besides the artist's choices. */
export interface PlanOptions {
  /**
   * What speaks against the capture, as `checkCapture` finds it or {@link comparisonFindings} against
   * another one: carried among the cautions, save what was only `"unchecked"` or `"declared"`.
   */
  readonly findings?: readonly PlanFinding[];
  /**
   * For live dragging: the same dots, readings and moves, but uncertainties are not computed. Every `u` is
   * `Infinity`, and nothing is decided by proof. Default false.
   */
  readonly preview?: boolean;
  /** Limits of {@link shapeFindings} that are to be others: what exceeds them is among the cautions. */
  readonly shapeLimits?: Partial<ShapeLimits>;
}

/**
 * A map of both brows from a face in millimetres: the dots and the reasons for them, what is read on
 * them with its uncertainty, how the sides still differ with decisions, the moves from the natural
 * brows, and what to be careful about.
 *
 * Every length carries the uncertainties of the landmarks and of the skin's depth, to first order;
 * the midline is taken as given. For a face on a photo use {@link planOnPhoto}, which knows that the
 * midline and the scale are uncertain too.
 *
 * @throws GeometryError as {@link planDots}
 *
 * @example
 * ```ts
 * import { mm, planBrows, type PlannableFace } from "brow-geometry";
 * const side = (sign: 1 | -1, up: number) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: [mm([sign * 15, 20 + up]), mm([sign * 38, 27 + up]), mm([sign * 57, 18 + up])] },
 * });
 * const face: PlannableFace = { right: side(-1, 0), left: side(1, 3), midline: {} };
 * const plan = planBrows(face, { lead: "left" });
 * const [first] = plan.moves;
 * first?.kind === "move" && first.up; // → { value: 3.0, u: 0.38 }
 * first; // → { kind: "move", side: "right", dot: "upperStart" }
 * plan.cautions[0]?.code; // → "planning-aid"
 * ```
 */
export function planBrows(
  face: PlannableFace,
  choices: Choices = {},
  options: PlanOptions = {},
): BrowPlan {
  return refusingAs("planBrows", () => {
    const plan = planDots(face, choices);
    return finishedPlan(plan, causesOnFace, choices, options);
  });
}

/**
 * A map of both brows from a face on a photo, as {@link planBrows}; the uncertainties of the midline
 * and of the scale are carried into every length too.
 *
 * @throws GeometryError as {@link planDots} and `faceFrame`; `out-of-range` where the scale makes a face less than
 * half or more than twice as large as faces are
 *
 * @example
 * ```ts
 * import { faceFrame, mm, type PlannableFace, planOnPhoto, px, scaleFromReference } from "brow-geometry";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: px([500 + sign * 80, 400]),
 *   exocanthion: px([500 + sign * 220, 400]),
 *   alare: px([500 + sign * 85, 590]),
 *   brow: { upper: [px([500 + sign * 75, 300]), px([500 + sign * 190, 265]), px([500 + sign * 285, 310])] },
 * });
 * const photo: PlannableFace<"px"> = { right: side(-1), left: side(1), midline: {} };
 * const scale = scaleFromReference(px([0, 0]), px([250, 0]), mm(50));
 * const plan = planOnPhoto(photo, faceFrame(photo, scale));
 * plan.dots.left.upperStart; // → [15.0, 20.0]
 * ```
 */
export function planOnPhoto(
  photo: PlannableFace<"px">,
  frame: FaceFrame,
  choices: Choices = {},
  options: PlanOptions = {},
): BrowPlan {
  return refusingAs("planOnPhoto", () => {
    requireObject("frame", frame, "a frame");
    const read = readFace(mapFace(requirePlannable(photo), ontoFace(frame)));
    requireSize(read.face);
    const plan = planAcross(frame.midline.tiltU, read, choices);
    const causes = (truth: Variation): readonly Cause[] => causesOnPhoto(truth, frame);
    return { ...finishedPlan(plan, causes, choices, options, frame), frame };
  });
}

function finishedPlan(
  plan: PlannedDots,
  causes: (truth: Variation) => readonly Cause[],
  choices: Choices,
  options: PlanOptions,
  frame?: FaceFrame,
): BrowPlan {
  requireNames("options", options, ["findings", "preview", "shapeLimits"]);
  const { findings = [], preview = false, shapeLimits } = options;
  const { face, skin } = plan;
  const truth = onlyRead({ face, skin, pins: plan.choices.pins });
  const { natural, planned, moves } = readPlan(
    plan,
    truth,
    preview ? undefined : causes(truth),
    choices.thickness === undefined,
  );
  const { rule, tolerances = WORKING_TOLERANCES } = choices;
  const judged = { tolerances, ...(rule === undefined ? {} : { rule }) };
  const asked = plan.choices.frontShare;
  const shareDecisions = decideShares(planned.measures, asked, tolerances, judged);
  return {
    version: MAP_VERSION,
    ...plan,
    measures: planned.measures,
    comparison: comparisonOf(planned, judged),
    ...(shareDecisions === undefined ? {} : { shareDecisions }),
    naturalMeasures: natural.measures,
    naturalComparison: comparisonOf(natural, judged),
    moves,
    cautions: [
      ...cautionsFor(plan.face, frame, choices.declared, findings),
      ...findingsOf(plan, shapeLimits),
    ],
  };
}
