import type { Face } from "../landmarks/index.js";
import {
  hasDepth,
  length,
  measured,
  type Measured,
  type Scale,
  toMillimetres,
} from "../units/index.js";
import type { Capture } from "./capture.js";
import { type Finding, finding, judged, unchecked } from "./finding.js";

export function pictureFindings(capture: Capture): readonly Finding[] {
  const { face, scale, tolerance, limits } = capture;
  const away = cameraDistance(capture);
  const known = browDepth(face, scale);
  const depth = known ?? USUAL_BROW_DEPTH;
  return [
    ...judged(
      {
        check: "resolution",
        measured: scale && pixelsOf(tolerance, scale),
        values: { pixel: scale?.factor ?? 0, tolerance },
      },
      limits,
    ),
    ...(away === undefined
      ? [distanceUnknown(capture, depth, known !== undefined)]
      : judged(
          {
            check: "cameraDistance",
            measured: away,
            values: { percent: (100 * depth) / away.value },
          },
          limits,
        )),
  ];
}

function pixelsOf(tolerance: number, { factor, u }: Scale): Measured {
  const pixels = tolerance / factor;
  return measured(pixels, (pixels * u) / factor);
}

/** Landmarks do not tell how near the camera was: people differ by more than perspective does. */
function distanceUnknown({ limits }: Capture, depth: number, known: boolean): Finding {
  const { lower } = limits.cameraDistance.limits;
  if (lower === undefined) return unchecked("cameraDistance", "cameraDistance");
  return finding("cameraDistance", "camera-distance-unknown", "unchecked", {
    limit: lower,
    percent: (100 * depth) / lower,
    depth,
    from: known ? "landmarks" : "usual",
    need: "cameraDistance",
  });
}

/** A pinhole draws a millimetre `focalLength / distance` pixels wide. */
function cameraDistance({ cameraDistance, focalLength, scale }: Capture): Measured | undefined {
  const known = cameraDistance ?? scale?.cameraDistance;
  if (known !== undefined) return known;
  if (focalLength === undefined || scale === undefined) return undefined;
  return measured<number>(focalLength * scale.factor, focalLength * scale.u);
}

/** A brow's start lies about 15 mm before the irises and its tail end about 10 mm behind; ours. */
const USUAL_BROW_DEPTH = 25;

/** How far a brow's tail end lies behind its start, both sides' mean, in millimetres. */
function browDepth({ right, left }: Face<"px">, scale: Scale | undefined): number | undefined {
  const drops = [right.brow, left.brow].flatMap((brow) => {
    const [start, end] = [brow?.upper[0], brow?.upper.at(-1)];
    return start && end && hasDepth(start) && hasDepth(end) ? [start[2] - end[2]] : [];
  });
  const [one, other] = drops;
  if (one === undefined || other === undefined || scale === undefined) return undefined;
  return toMillimetres(length((one + other) / 2), scale);
}
