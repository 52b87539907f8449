import {
  checkCapture,
  drawPlan,
  fromMarkup,
  GeometryError,
  mm,
  planOnPhoto,
  requirePlannable,
  scaleFromIris,
  scaleFromReference,
  turnToFront,
} from "brow-geometry";
import { flatPoint, hasDepth, deepPoint } from "brow-geometry/units";
import { mapFace } from "brow-geometry/landmarks";

/**
 * @typedef {import("brow-geometry").BrowPlan} BrowPlan
 * @typedef {import("brow-geometry").FaceFrame} FaceFrame
 * @typedef {import("brow-geometry").Finding} Finding
 * @typedef {import("brow-geometry").PlannableFace<"px">} PlannableFace
 * @typedef {import("./page/reader.js").FoundFace} FoundFace
 * @typedef {import("./page/reader.js").PhotoWindow} PhotoWindow
 */

/**
 * @typedef {object} CutOut  A square of the photo.
 * @property {PhotoWindow} window
 * @property {number} side  How many pixels it is drawn with, each way.
 * @property {string} href  It as a data address.
 */

/**
 * Degrees: heads at parties are turned farther than any that is to be measured. They are mapped as
 * seen from their own front, and the caption says how far they were turned back.
 */
const mostYaw = 45;

/** Side of the square that is shown about a face, in sizes of the face. */
const roomAroundMap = 1.4;

/**
 * The square of the photo in which a face is shown.
 * @param {FoundFace} face
 * @param {{ width: number, height: number }} photo
 * @returns {PhotoWindow}
 */
export function windowAround({ landmarks }, photo) {
  const across = landmarks.map(([x]) => x * photo.width);
  const down = landmarks.map(([, y]) => y * photo.height);
  const [left, right] = [Math.min(...across), Math.max(...across)];
  const [top, bottom] = [Math.min(...down), Math.max(...down)];
  const size = Math.round(roomAroundMap * Math.max(right - left, bottom - top));
  return {
    x: Math.round((left + right - size) / 2),
    y: Math.round((top + bottom - size) / 2),
    size,
  };
}

/**
 * The map of one face over its square of the photo, with lines that say what is on it.
 * @param {FoundFace} face
 * @param {{ width: number, height: number }} photo
 * @param {CutOut} picture
 * @returns {{ svg: string, lines: readonly string[], mapped: boolean }}
 */
export function overlay(face, photo, picture) {
  const { href, side } = picture;
  try {
    const landmarks = fromMarkup("mesh-478", face.landmarks, {
      coordinates: "normalised",
      image: photo,
    });
    const onPhoto = requirePlannable(landmarks);
    const covered = areIrisesCovered(onPhoto);
    const findings = checkCapture(onPhoto, { purpose: "map", scale: scaleOf(onPhoto, covered) });
    const cutOut = mapFace(onPhoto, toCutOut(picture));
    // Drawn over another picture than it was found in.
    const source = cutOut.source && { ...cutOut.source, picture: { width: side, height: side } };
    const inPicture = requirePlannable({ ...cutOut, ...(source && { source }) });
    const frame = turnToFront(inPicture, scaleOf(inPicture, covered), { mostYaw });
    const plan = planOnPhoto(inPicture, frame, {}, { findings });
    const svg = drawPlan(plan, { photo: { width: side, height: side, href } });
    return { svg, lines: [...reading(frame, plan), ...warnings(findings)], mapped: true };
  } catch (error) {
    if (!(error instanceof GeometryError)) throw error;
    const { field, need } = error.detail;
    return {
      svg: withoutMap(picture),
      lines: [`no map: ${field} needs ${need}`],
      mapped: false,
    };
  }
}

/** Outer eye corners of women and men: 88.4 ± 3.7 and 93.0 ± 5.6 mm (BioMed Res Int 2013:821428). */
const eyeCorners = { apart: mm(90), u: mm(5) };

/**
 * Whether lids cover the irises: a detector then guesses where they are.
 * @param {PlannableFace} face
 */
function areIrisesCovered(face) {
  return checkCapture(face, { purpose: "map" }).some(
    ({ code }) => code === "eye-closed" || code === "eyes-wide-for-irises",
  );
}

/**
 * The irises tell the scale, where they are seen.
 * @param {PlannableFace} face @param {boolean} covered
 */
function scaleOf(face, covered) {
  return covered
    ? scaleFromReference(face.right.exocanthion, face.left.exocanthion, eyeCorners.apart, {
        u: eyeCorners.u,
      })
    : scaleFromIris(face);
}

/**
 * From pixels of the photo to those of the cut-out, which are squares too: depth goes along.
 * @param {CutOut} picture
 * @returns {import("brow-geometry/landmarks").PointMap<"px", "px">}
 */
function toCutOut({ window, side }) {
  const scale = side / window.size;
  return (point) => {
    const [x, y] = [(point[0] - window.x) * scale, (point[1] - window.y) * scale];
    return hasDepth(point) ? deepPoint(x, y, point[2] * scale) : flatPoint(x, y);
  };
}

/**
 * What is read on the map, right before left.
 * @param {FaceFrame} frame @param {BrowPlan} plan
 */
function reading({ midline, turning, scale }, { measures: { right, left } }) {
  const both = (
    /** @type {"front" | "tail" | "frontShare"} */ name,
    /** @type {number} */ digits,
  ) => [right, left].map((one) => one[name]?.value.toFixed(digits) ?? "–").join(" | ");
  return [
    `tilt ${midline.tilt.toFixed(1)}°, turned back ${turning?.yaw.toFixed(1) ?? 0}°, scale: ${scale.source === "iris" ? "irises" : "eye corners"}`,
    `front ${both("front", 0)}, tail ${both("tail", 0)} mm, share ${both("frontShare", 2)}`,
  ];
}

/** @param {readonly Finding[]} findings */
function warnings(findings) {
  return /** @type {const} */ (["retake", "caution"]).flatMap((severity) => {
    const codes = findings.filter((one) => one.severity === severity).map(({ code }) => code);
    return codes.length === 0
      ? []
      : [`${severity}: ${[...new Set(codes)].join(", ").replaceAll("-", " ")}`];
  });
}

/** @param {CutOut} picture */
function withoutMap({ href, side }) {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${side}" height="${side}" viewBox="0 0 ${side} ${side}"><title>No map</title><image width="${side}" height="${side}" href="${href}"/></svg>`;
}
