import { type Face, type GuideConvention, GUIDES } from "../landmarks/index.js";
import { type Side } from "../units/index.js";
import { keysOf, refuse, requireWord, SIDES } from "../units/internal.js";
import type { FaceForGuide } from "./guide.js";

/**
 * Narrows a face to one that has the landmarks of a guide on both sides.
 *
 * @throws GeometryError `missing-landmark`, naming what is missing
 */
export function requireGuideLandmarks<Convention extends GuideConvention>(
  face: Face<"mm">,
  convention: Convention,
): FaceForGuide<Convention> {
  requireLandmarksOn("requireGuideLandmarks", face, SIDES, convention);
  return face as FaceForGuide<Convention>;
}

/** Refuses a face without a guide's landmarks on the given sides, naming every one that is missing. */
export function requireLandmarksOn(
  where: string,
  face: Face<"mm">,
  sides: readonly Side[],
  convention: GuideConvention,
): void {
  requireWord(where, "convention", convention, keysOf(GUIDES));
  const missing = sides.flatMap((side) =>
    GUIDES[convention].through
      .filter((name) => face[side][name] === undefined)
      .map((name) => `${side}.${name}`),
  );
  if (missing.length > 0) {
    const need = `a point, for the ${GUIDES[convention].mark} ${GUIDES[convention].words}`;
    refuse("missing-landmark", where, missing.join(", "), undefined, need);
  }
}
