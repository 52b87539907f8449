import type { PointLandmark } from "../../landmarks/index.js";

/** Single landmarks in words, for the titles of their crosses. */
export const LANDMARK_WORDS: Readonly<Record<PointLandmark, string>> = {
  endocanthion: "inner eye corner (endocanthion)",
  exocanthion: "outer eye corner (exocanthion)",
  pupil: "pupil",
  limbusMedial: "inner edge of the iris",
  limbusLateral: "outer edge of the iris",
  alare: "nose wing (alare)",
  cheilion: "mouth corner (cheilion)",
  glabella: "between the brows (glabella)",
  sellion: "root of the nose (sellion)",
  pronasale: "tip of the nose (pronasale)",
  subnasale: "base of the nose (subnasale)",
  labialeSuperius: "upper lip (labiale superius)",
  stomion: "middle of the mouth (stomion)",
  stomionSuperius: "upper lip's margin (stomion superius)",
  stomionInferius: "lower lip's margin (stomion inferius)",
  menton: "chin (menton)",
};

/** A landmark that its source only approximates. */
export const APPROXIMATED = "{landmark}, approximated";

/** Titles of dots: where one lies, and that it was drawn. */
export const DOT_TITLES = {
  above: "{side} {dot}: {distance} from the midline, {height} above the inner eye corners",
  below: "{side} {dot}: {distance} from the midline, {height} below the inner eye corners",
  drawn: "{side} {dot} as drawn",
} as const;

/** What is written beside lines. */
export const LABELS = { midline: "midline", start: "start", arch: "arch", tail: "tail" } as const;
