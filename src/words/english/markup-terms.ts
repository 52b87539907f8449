import { LANDMARKS } from "../../landmarks/index.js";
import { keysOf } from "../../units/internal.js";
import type { Terms } from "../catalogue/terms.js";

/** What landmarks are called, and what markups are and read instead of landmarks. */
export const MARKUP_TERMS: Pick<
  Terms,
  "landmarks" | "landmarkPaths" | "lacked" | "markups" | "standIns"
> = /* @__PURE__ */ markupTerms();

function markupTerms(): typeof MARKUP_TERMS {
  const landmarks = {
    endocanthion: "inner eye corner",
    exocanthion: "outer eye corner",
    pupil: "pupil",
    limbusMedial: "inner edge of the iris",
    limbusLateral: "outer edge of the iris",
    alare: "nose wing",
    cheilion: "mouth corner",
    upperLid: "upper lid",
    lowerLid: "lower lid",
    brow: "brow",
    glabella: "between the brows",
    sellion: "root of the nose",
    pronasale: "tip of the nose",
    subnasale: "base of the nose",
    labialeSuperius: "upper lip",
    stomion: "middle of the mouth",
    stomionSuperius: "upper lip's margin",
    stomionInferius: "lower lip's margin",
    menton: "chin",
  };
  return {
    landmarks,
    landmarkPaths: pathsOf(landmarks),
    lacked: {
      ...landmarks,
      lowerBorder: "lower border of the brow",
      depth: "depth",
      measuredDepth: "measured depth",
    },
    markups: {
      "mesh-478": "Face mesh of 478 points, with irises",
      "mesh-468": "Face mesh of 468 points, without irises",
      "points-68": "68 points (300-W, iBUG)",
      "points-98": "98 points (WFLW)",
      "coco-wholebody-face": "Face part of COCO-WholeBody, keypoints 23–90",
    },
    standIns: {
      "wing-crease": "where the nose wing meets the cheek",
      "wing-back": "the back of the nose wing",
      "wing-side": "the side of the nose wing",
      "wing-lower": "the lower side of the nose wing",
      "wing-base": "the base of the nose wing",
      "septum-point": "a point of the mesh near where nose and lip meet",
      "chin-point": "a point of the mesh near the lowest point of the chin",
      "brow-template": "the mesh's brow template, not the hair itself",
      "nostril-outer": "outer point of the nostril row",
      "nostril-inner": "inner point of the nostril row",
      "nostril-middle": "middle of the nostril row",
      "eye-centroid": "middle of the six points of the eye",
      "bridge-top": "top of the nasal bridge",
      "bridge-end": "lower end of the nasal bridge",
      "jaw-middle": "middle of the jaw line",
      "mirrored-brow": "the other brow, mirrored",
      "average-heights":
        "average heights of women’s brows, from which people differ by {4:mm} and more (Matros et al. 2009)",
      "five-point-line": "one line of five points, without thickness",
      "base-outer": "outer point of the base of the nose",
      "base-inner": "inner point of the base of the nose",
      "base-middle": "middle of the base of the nose",
      "contour-middle": "middle of the face's contour",
    },
  };
}

/** A landmark on its side: "right nose wing". */
export function pathsOf(landmarks: Terms["landmarks"]): Terms["landmarkPaths"] {
  const side = (which: string): readonly (readonly [string, string])[] => [
    ...keysOf({ ...LANDMARKS.side, ...LANDMARKS.lines }).map(
      (name) => [`${which}.${name}`, `${which} ${landmarks[name]}`] as const,
    ),
    [`${which}.brow.upper`, `upper border of the ${which} brow`],
    [`${which}.brow.lower`, `lower border of the ${which} brow`],
  ];
  const midline = keysOf(LANDMARKS.midline).map(
    (name) => [`midline.${name}`, landmarks[name]] as const,
  );
  return Object.fromEntries([
    ...side("right"),
    ...side("left"),
    ...midline,
  ]) as Terms["landmarkPaths"];
}
