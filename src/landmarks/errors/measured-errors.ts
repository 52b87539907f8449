import type { KnownErrors, MarkupErrors } from "./markup-errors.js";

// Written by `npm run study:errors`: see bench/error-model.

/**
 * Detectors measured by us against 102 frontal faces drawn by hand: DeBruine L. and Jones B., Face
 * Research Lab London Set, figshare, doi 10.6084/m9.figshare.5047666.v5, CC BY 4.0; template points as
 * in the R data package webmorphR.stim. The iris drawn by hand is taken as 11.71 mm wide.
 */

/** @mediapipe/face_mesh 0.4.1657299874. */
const MESH: MarkupErrors = {
  upper: [-5, -20, 1, -4, 10, 2, 16, -10, 8, -30],
  lower: [7, -4, 13, -11, 18, -15, 21, -17, 28, -16],
  alare: [-11, 1],
};

/** @vladmandic/face-api 1.7.15 (faceLandmark68Net). */
const POINTS_68: MarkupErrors = {
  upper: [-30, -22, -14, -14, 2, -8, 14, -19, 11, -43],
  endocanthion: [-12, -15],
  exocanthion: [8, -12],
  upperLid: [-12, -15, 0, 2, 8, -12],
  lowerLid: [-12, -15, 0, -13, 8, -12],
  alare: [43, 32],
};

/** The errors of the usual detector of each markup, where they are known. */
export const MARKUP_ERRORS: KnownErrors = {
  "mesh-478": MESH,
  "mesh-468": MESH,
  "points-68": POINTS_68,
};
