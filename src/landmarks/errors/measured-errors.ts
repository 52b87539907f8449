import { length } from "../../units/index.js";
import type { KnownErrors, MarkupErrors } from "./markup-errors.js";

// Written by `npm run study:errors`: see bench/error-model.

/**
 * Detectors measured by us against 102 frontal faces drawn by hand: DeBruine L. and Jones B., Face
 * Research Lab London Set, figshare, doi 10.6084/m9.figshare.5047666.v5, CC BY 4.0; template points as
 * in the R data package webmorphR.stim. The iris drawn by hand is taken as 11.71 mm wide.
 */

/** @mediapipe/face_mesh 0.4.1657299874. */
const MESH: MarkupErrors = {
  places: {
    upper: {
      shift: [-5, -20, 0, 0, 8, 0, 12, -15, 8, -30],
      alike: [
        [-1, -1, -8, -3, -14, 1, -13, 9, -9, 14],
        [14, 5, 8, 1, 2, -1, -1, 1, -1, 3],
        [-2, -3, -2, -1, -2, 3, 3, 3, 7, 3],
        [0, -4, 4, -1, 8, -2, 2, 0, 0, 3],
        [0, 9, 2, 3, 2, 1, 1, 1, 2, 2],
        [0, 0, 0, 0, -1, 0, 0, 1, 1, 3],
        [-4, 1, -1, -1, 1, -3, 0, -2, 0, 0],
        [-2, -1, 0, 3, 2, 4, 1, 2, -1, 0],
      ],
      unlike: [
        [-4, -2, -6, -1, -8, 1, -5, 3, -3, 2],
        [0, 0, 3, 1, 6, -1, 0, -1, -4, 1],
        [4, 1, 1, 0, -1, 1, -1, 3, -1, 4],
        [-2, 1, 0, 0, 1, 1, 1, 1, 3, 3],
        [-2, -4, -1, -1, 1, -1, 0, 0, 0, 1],
        [1, 0, 1, -2, 0, -2, -1, -1, 0, 0],
        [-2, 2, -1, 0, 0, -2, -1, -1, 0, 0],
        [-1, 1, 0, 0, 0, 1, 0, 0, 0, 0],
        [0, 0, 0, 1, 0, 0, -1, -1, 0, 0],
      ],
    },
    lower: {
      shift: [7, -4, 16, -15, 20, -17, 21, -22, 28, -16],
      alike: [
        [-3, 2, -6, 3, -8, 8, -9, 12, -9, 15],
        [13, 6, 8, 5, 4, 4, 1, 3, -1, 3],
        [-1, 0, 2, 2, 4, 4, 6, 4, 7, 3],
        [-1, -3, -2, 0, -2, 1, -1, 3, 0, 3],
        [-4, 2, -2, -1, -1, 0, 0, 1, 2, 2],
        [2, -1, 1, -4, 0, -6, 1, -1, 1, 2],
        [2, 4, 1, 1, 0, 0, 0, 0, 0, 1],
        [1, 2, 0, 1, 0, 0, -1, 0, -1, 0],
      ],
      unlike: [
        [-4, -1, -4, 0, -4, 0, -4, 2, -4, 2],
        [-1, -1, -2, -1, -3, 0, -3, 1, -4, 1],
        [4, 1, 2, 0, 1, 1, 0, 2, 0, 4],
        [-3, -1, -1, 0, 0, 1, 1, 2, 3, 3],
        [2, 0, 1, -1, 1, 0, 0, 0, 0, 1],
        [-1, -1, 0, -2, 0, -2, 0, 0, 0, 0],
        [1, 2, 0, 0, 0, 0, 0, 0, 0, 0],
        [1, -1, 0, -1, 0, -1, 0, 0, 0, 0],
        [0, -1, 0, 0, 0, 0, 0, 0, 0, 0],
      ],
    },
    alare: { shift: [-11, 1], rest: [1.6, 2.9] },
    endocanthion: { rest: [1, 0.8] },
    exocanthion: { rest: [1.3, 0.9] },
  },
  landmarks: { upperLid: length(0.8), brow: length(1.5) },
};

/** @vladmandic/face-api 1.7.15 (faceLandmark68Net). */
const POINTS_68: MarkupErrors = {
  places: {
    upper: {
      shift: [-30, -22, 0, -11, 32, -10, 25, -29, 11, -43],
      alike: [
        [-2, 0, -9, -1, -16, 4, -13, 10, -9, 16],
        [16, 9, 9, 4, 2, 1, -1, 2, -2, 6],
        [-4, 5, -1, 5, 1, 7, 4, 4, 7, 3],
        [3, -9, 2, -2, 3, 3, 2, 3, 2, 5],
      ],
      unlike: [
        [-5, -3, -7, -2, -10, 1, -7, 2, -7, 1],
        [3, 2, -1, 1, -4, 3, 0, 3, 5, 3],
        [4, 1, 3, 1, 2, 2, -2, 3, -5, 4],
        [-4, 3, -1, 3, 2, 2, 0, 1, 0, 2],
        [-1, -4, 0, -1, 2, 1, 1, 2, 1, 3],
      ],
    },
    endocanthion: {
      shift: [-12, -15],
      unlike: [
        [-4, 0],
        [4, 0],
        [-2, 0],
        [0, 0],
        [1, 0],
      ],
      rest: [1.3, 1],
    },
    exocanthion: {
      shift: [8, -12],
      unlike: [
        [-5, 0],
        [4, 1],
        [-2, 0],
        [0, 1],
        [1, 1],
      ],
      rest: [1.6, 1.1],
    },
    upperLid: { shift: [-12, -15, 0, 2, 8, -12] },
    lowerLid: { shift: [-12, -15, 0, -13, 8, -12] },
    alare: { shift: [43, 32], rest: [1.9, 2.9] },
  },
  landmarks: { upperLid: length(1), brow: length(1.8) },
  others: 1.7,
};

/** The errors of the usual detector of each markup, where they are known. */
export const MARKUP_ERRORS: KnownErrors = {
  "mesh-478": MESH,
  "mesh-468": MESH,
  "points-68": POINTS_68,
};
