import { type Brow } from "../../landmarks/index.js";
import { flatPoint, type Length, length, type Point } from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import type { PlannableFace } from "./plannable-face.js";

/**
 * Average heights of the upper border of brows above the level of the inner eye corners, in mm: above inner
 * corner, pupil and outer corner. Women of 20 to 30 (n = 36) and of 50 to 60 years (n = 34): Matros et al.,
 * Plast Reconstr Surg 2009;124:1296. Nothing as good was found of men.
 */
export const BROW_HEIGHTS = {
  "women-20-30": { endocanthion: 15.7, pupil: 19.8, exocanthion: 21.3 },
  "women-50-60": { endocanthion: 19.1, pupil: 22.4, exocanthion: 22.4 },
} as const;

/** Whose average heights. */
export type BrowHeights = keyof typeof BROW_HEIGHTS;

/**
 * How much people of one group differ in these heights, as a standard deviation, and how far groups lie apart.
 * Measured by us on the 204 brows of 102 faces drawn by hand (DeBruine & Jones, Face Research Lab London Set, doi
 * 10.6084/m9.figshare.5047666.v5, CC BY 4.0): people differ by 4.0, 3.6 and 3.7 mm, and theirs lie 5.1, 6.3 and
 * 5.1 mm above the mean of the published averages. One other group tells how far apart groups may lie, not more.
 */
const SPREAD = { people: 4, groups: 5.5 };

/** Both brows are off by as much; a plan takes their errors to be independent, and half-way between less. */
export const HEIGHTS_U: Length<"mm"> = /* @__PURE__ */ length(
  Math.SQRT2 * Math.hypot(SPREAD.people, SPREAD.groups),
);

/**
 * A brow at average heights over an eye, in the face space. It ends on the line from the nose wing through the
 * outer corner of the eye, level with its start (Westmore, as reported by Yalçınkaya et al., Eur Arch
 * Otorhinolaryngol, doi 10.1007/s00405-014-3356-0). How thick it is nobody says.
 */
export function averageBrow(
  { endocanthion, exocanthion, alare, pupil }: Omit<PlannableFace["left"], "brow">,
  of: BrowHeights | undefined,
): Brow<"mm"> {
  const heightAt = (place: keyof (typeof BROW_HEIGHTS)[BrowHeights]): number => {
    if (of !== undefined) return BROW_HEIGHTS[of][place];
    const groups = Object.values(BROW_HEIGHTS);
    return groups.reduce((sum, heights) => sum + heights[place], 0) / groups.length;
  };
  const [innerX, outerX] = [endocanthion[0], exocanthion[0]];
  const start = heightAt("endocanthion");
  const upper: readonly Point<"mm">[] = [
    flatPoint(innerX, start),
    flatPoint(pupil?.[0] ?? (innerX + outerX) / 2, heightAt("pupil")),
    flatPoint(outerX, heightAt("exocanthion")),
    flatPoint(tailAt(start, alare, exocanthion), start),
  ];
  return { upper };
}

/** How far across the line from the nose wing through the outer corner of the eye is at a height. */
function tailAt(height: number, [x, y]: Point<"mm">, [outerX, outerY]: Point<"mm">): number {
  if (!(outerY > y)) {
    refuse("no-solution", "exocanthion", outerY, `a height above alare, ${y}`);
  }
  return x + ((outerX - x) * (height - y)) / (outerY - y);
}
