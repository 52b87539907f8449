import {
  type GuideConvention,
  GUIDES,
  type Mark,
  START_CONVENTIONS,
} from "../../landmarks/index.js";
import { isGuide, TAIL_CONVENTIONS } from "../../landmarks/internal.js";
import { atHeight, sightLine } from "../../proportions/internal.js";
import { placeOnSide } from "../../symmetry/index.js";
import { type Note, type Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { isHair } from "../dots/is-hair.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { type WishLimitNotes, wishNote } from "./notes.js";

/** The marks that guides hold across the face, the dot of each, and the guides between which it stays. */
const HELD = {
  start: { dot: "upperStart", guides: START_CONVENTIONS },
  // That a brow does not end before the outer corner of the eye is trade practice, no source.
  tail: { dot: "tailEnd", guides: [...TAIL_CONVENTIONS, "exocanthion-vertical"] },
} as const;

/**
 * The first start or tail end that stands outside of its guides and of the hair, and farther than it stood
 * before.
 */
export function beyondGuides(
  plan: PlannedDots,
  before: PlannedDots,
): Note<keyof WishLimitNotes> | undefined {
  for (const side of SIDES) {
    for (const mark of ["start", "tail"] as const) {
      const { dot } = HELD[mark];
      const [at, was] = [plan, before].map(
        ({ dots }) => placeOnSide(dots[side][dot], side).distance,
      );
      if (at === undefined || was === undefined) continue;
      const { inner, outer } = rangeOf(plan, side, mark);
      if (at < inner.distance - ROUNDING && at < was) return inner.note;
      if (at > outer.distance + ROUNDING && at > was) return outer.note;
    }
  }
  return undefined;
}

/** What adding and subtracting coordinates may cost, in mm. */
const ROUNDING = 1e-9;

/** A bound of where a mark may stand, as a distance from the midline. */
interface Bound {
  readonly distance: number;
  readonly note: Note<keyof WishLimitNotes>;
}

/** Between what a mark may stand, at the height of its dot. */
function rangeOf(
  { face, dots, natural }: PlannedDots,
  side: Side,
  mark: Extract<Mark, keyof typeof HELD>,
): { readonly inner: Bound; readonly outer: Bound } {
  const { dot, guides } = HELD[mark];
  const hair: Bound = {
    distance: placeOnSide(natural[side].dots[dot], side).distance,
    note: wishNote("wish-at-hair", { side, mark }),
  };
  const lines: readonly GuideConvention[] = [...guides].filter(isGuide);
  const met = lines.flatMap((guide): readonly Bound[] => {
    if (GUIDES[guide].through.some((name) => face[side][name] === undefined)) return [];
    const at = atHeight(sightLine(guide, face[side], 0), dots[side][dot][1]);
    if (at === undefined) return [];
    const { distance } = placeOnSide(at, side);
    return [{ distance, note: wishNote("wish-at-guide", { side, guide }) }];
  });
  const bounds = isHair(face, side) ? [...met, hair] : met;
  return {
    inner: bounds.reduce((one, other) => (other.distance < one.distance ? other : one)),
    outer: bounds.reduce((one, other) => (other.distance > one.distance ? other : one)),
  };
}
