import { distance } from "../geometry/index.js";
import { type Face, type FaceSide, landmarkUncertainty } from "../landmarks/index.js";

import {
  type Length,
  length,
  type Measured,
  type Note,
  type Scale,
  type ScaleNoteCode,
  type Side,
} from "../units/index.js";
import {
  measuredAs,
  refuse,
  refusingAs,
  requireFinitePoint,
  requireNames,
  requireObject,
  requirePositive,
  scaleNote,
} from "../units/internal.js";
import { requireBaseline, type SeenWidth } from "./baseline.js";

/**
 * Horizontal visible iris diameter of adults: 11.71 ± 0.42 mm in 743 eyes.
 *
 * Source: Rüfer, Schröder & Erb, Cornea 2005;24:259–261.
 */
export const IRIS_WIDTH: Measured<Length<"mm">> = { value: length(11.71), u: length(0.42) };

/** What is known of the irises and the camera, where it is better than the defaults. */
export interface IrisOptions {
  /** This client's horizontal visible iris diameter; default {@link IRIS_WIDTH}, the population's. */
  readonly width?: Measured<Length<"mm">>;
  /** How many times too wide the source draws an iris; default the face's own source's. */
  readonly ringFactor?: Measured;
  /** Standard uncertainty of each limbus point; default the face's own source's. */
  readonly placement?: Length<"px">;
  /** From the camera to the eyes. */
  readonly cameraDistance?: Measured<Length<"mm">>;
}

/**
 * The scale of a photo from the width of the irises, where there is no ruler: good to about 4 %.
 *
 * It holds in the plane of the irises. Where the camera's distance is known, `faceFrame` and
 * `turnToFront` correct perspective. Otherwise u covers what perspective may do to a brow, whose
 * start lies nearer to the camera and whose tail lies farther.
 *
 * @throws GeometryError `missing-landmark` where no side has both edges of its iris, `not-finite`,
 * `out-of-range`, `ill-conditioned` where an iris is hardly wider than its uncertainty
 *
 * @example
 * ```ts
 * import { type Face, px, scaleFromIris } from "brow-geometry";
 * const face: Face<"px"> = {
 *   right: { limbusMedial: px([462, 500]), limbusLateral: px([404, 500]) },
 *   left: { limbusMedial: px([640, 500]), limbusLateral: px([699, 501]) },
 *   midline: {},
 * };
 * const scale = scaleFromIris(face);
 * scale.factor; // → 0.200
 * scale.u; // → 0.009
 * scale.notes.map(({ code }) => code); // → ["population-average", "perspective-unknown"]
 * ```
 */
export function scaleFromIris(face: Face<"px">, options: IrisOptions = {}): Scale {
  return refusingAs("scaleFromIris", () => {
    requireObject("face", face, "a face");
    requireNames("options", options, ["width", "ringFactor", "placement", "cameraDistance"]);
    const width = options.width ?? IRIS_WIDTH;
    const ringFactor = options.ringFactor ?? face.source?.ringFactor ?? { value: 1, u: 0 };
    requirePositive("width", measuredAs(width.value, width.u).value);
    requirePositive("ringFactor", measuredAs(ringFactor.value, ringFactor.u).value);
    const { seen, notes } = seenWidth(face, placementOf(face, width, options));
    const factor = (width.value * ringFactor.value) / seen.value;
    const perspective = browPerspective(options.cameraDistance);
    const relative = Math.hypot(
      width.u / width.value,
      ringFactor.u / ringFactor.value,
      seen.u / seen.value,
      perspective.u,
    );
    return {
      from: "px",
      to: "mm",
      factor,
      u: factor * relative,
      source: "iris",
      notes: [
        ...widthNotes(width, options.width === undefined),
        ...ringNotes(ringFactor),
        ...notes,
        perspective.note,
      ],
      ...(options.cameraDistance === undefined ? {} : { cameraDistance: options.cameraDistance }),
    };
  });
}

/** Width of the irises in the photo, the mean of both, with notes on it. */
function seenWidth(face: Face<"px">, placement: (width: number) => number): SeenWidth {
  const right = irisWidth("right", face.right);
  const left = irisWidth("left", face.left);
  const one = right ?? left;
  if (one === undefined) {
    const need = "both edges of the iris on at least one side";
    refuse("missing-landmark", "limbusMedial, limbusLateral", undefined, need);
  }
  const mean = right === undefined || left === undefined ? one : (right + left) / 2;
  const u = placement(mean);
  requireBaseline("limbusMedial, limbusLateral", mean, measuredAs(mean, u));
  if (right === undefined || left === undefined) {
    return {
      seen: measuredAs(mean, u),
      notes: [scaleNote("one-iris", { side: right === undefined ? "left" : "right" })],
    };
  }
  const apart = Math.abs(right - left);
  return {
    // Where the two disagree by more than their placement explains, their disagreement counts.
    seen: measuredAs(mean, Math.max(u / Math.SQRT2, apart / 2)),
    notes: apart > COVERAGE * Math.SQRT2 * u ? [scaleNote("irises-differ", { right, left })] : [],
  };
}

/** Two standard uncertainties, about 95 %: a difference beyond them is more than placement. */
const COVERAGE = 2;

function irisWidth(side: Side, landmarks: FaceSide<"px">): number | undefined {
  const { limbusMedial, limbusLateral } = landmarks;
  if (limbusMedial === undefined || limbusLateral === undefined) return undefined;
  requireFinitePoint(`${side}.limbusMedial`, limbusMedial);
  requireFinitePoint(`${side}.limbusLateral`, limbusLateral);
  return distance(limbusMedial, limbusLateral);
}

/** Standard uncertainty of one iris's width in the photo, from the placement of its two edges. */
function placementOf(
  face: Face<"px">,
  iris: Measured<Length<"mm">>,
  { placement }: IrisOptions,
): (width: number) => number {
  if (placement !== undefined) return () => Math.SQRT2 * measuredAs<number>(0, placement).u;
  const edges = Math.hypot(
    landmarkUncertainty(face, "limbusMedial"),
    landmarkUncertainty(face, "limbusLateral"),
  );
  return (width) => (edges * width) / iris.value;
}

function widthNotes(
  width: Measured<Length<"mm">>,
  average: boolean,
): readonly Note<ScaleNoteCode>[] {
  if (!average) return [];
  return [
    scaleNote("population-average", {
      width: width.value,
      u: width.u,
      percent: (100 * width.u) / width.value,
    }),
  ];
}

function ringNotes(ringFactor: Measured): readonly Note<ScaleNoteCode>[] {
  if (ringFactor.value === 1) return [];
  return [scaleNote("ring-factor", { factor: ringFactor.value, u: ringFactor.u })];
}

/** How far a brow lies from the plane of the irises, in mm: its start nearer, its tail end farther. */
const NEARER_AT_START = 15;
const FARTHER_AT_TAIL = 10;

/** Root mean square of a depth spread evenly from one to the other. */
const DEPTH_SPREAD = Math.sqrt(
  (NEARER_AT_START ** 3 + FARTHER_AT_TAIL ** 3) / (3 * (NEARER_AT_START + FARTHER_AT_TAIL)),
);

/**
 * Where the camera may stand when nobody says: from a phone at arm's length to the distance from
 * which portraits count as free of distortion (about 1.5 m: JAMA Facial Plast Surg 2018), in mm.
 */
const NEAREST_CAMERA = 400;
const FARTHEST_CAMERA = 1500;

/** Of a distance spread evenly between the two, the root mean square of 1/distance is 1/√(a b). */
const USUAL_CAMERA = Math.sqrt(NEAREST_CAMERA * FARTHEST_CAMERA);

/** What perspective adds to the relative u of a brow: nothing where the distance is known. */
export function browPerspective(cameraDistance: Measured<Length<"mm">> | undefined): {
  readonly u: number;
  readonly note: Note<ScaleNoteCode>;
} {
  if (cameraDistance !== undefined) {
    const { value: distance } = measuredAs(cameraDistance.value, cameraDistance.u);
    requirePositive("cameraDistance", distance);
    return { u: 0, note: scaleNote("perspective-corrected", { distance }) };
  }
  return {
    u: DEPTH_SPREAD / USUAL_CAMERA,
    note: scaleNote("perspective-unknown", {
      distance: NEAREST_CAMERA,
      start: 100 * (1 / (1 - NEARER_AT_START / NEAREST_CAMERA) - 1),
      tail: 100 * (1 - 1 / (1 + FARTHER_AT_TAIL / NEAREST_CAMERA)),
    }),
  };
}
