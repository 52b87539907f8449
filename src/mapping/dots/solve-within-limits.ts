import { byRuler, isGuide } from "../../landmarks/internal.js";
import { guideOn, requireGuideLandmarks, shareOf } from "../../proportions/internal.js";
import { placeOnSide } from "../../symmetry/index.js";
import { eachSide, type Note } from "../../units/index.js";
import { unlessRefused } from "../../units/internal.js";
import { type Lead, ledBy, LEADS } from "../choices/choice-tables.js";
import { type ArchLimit, archLimits, LIMBUS_SHARE } from "./arch-limits.js";
import type { FaceRead, PlannedDots, Settled, SettledChoices } from "./planned-dots.js";
import type { PlannableFace } from "./plannable-face.js";
import { asksOf, type BorderEvent, type Solution, solveDots } from "./solve-dots.js";
import { reason, type ReasonCode } from "./notes.js";

/** Choices that are settled to the last, and the dots that follow from them. */
export interface Solved {
  readonly settled: Settled<SettledChoices>;
  readonly solution: ToldSolution;
}

/** Dots with the guides that were chosen, and where these did not meet the hair. */
interface ToldSolution extends Solution, Pick<PlannedDots, "guides"> {
  readonly events: readonly BorderEvent[];
}

/**
 * Solves settled choices. Where a tail end at the level of a start can be had nowhere beyond the arch, as on a head
 * that is turned far, it keeps the height of its own brow.
 *
 * @param isChosen whether the artist asked for front and tail by ruler: limits do not hold then
 */
export function solveWithinLimits(
  read: FaceRead,
  settled: Settled<SettledChoices>,
  isChosen: boolean,
): Solved {
  const { tail: guide, tailHeight: height } = settled.value;
  const levelled = unlessRefused(
    () => solveByShare(read, settled, isChosen),
    (code) => code === "no-solution" && height !== "natural",
  );
  if (levelled !== undefined) return levelled;
  const value: SettledChoices = { ...settled.value, tailHeight: "natural" };
  const reasons = [
    ...settled.reasons.filter(({ code }) => code !== "tail-at-guide"),
    reason("tail-level-nowhere", { guide, height }),
  ];
  return solveByShare(read, { value, reasons }, isChosen);
}

/**
 * Solves with the arch between the limits of a natural one where front and tail divide by ruler because no arch grows;
 * where no place of a brow divides them so, it stands on the outer one.
 */
function solveByShare(read: FaceRead, settled: Settled<SettledChoices>, isChosen: boolean): Solved {
  const { arch, lead, pins, frontShare: asked } = settled.value;
  const solve = (value: SettledChoices): ToldSolution => {
    const guides = guidesOf(read.face, value);
    const events: BorderEvent[] = [];
    const tell = (event: BorderEvent): unknown => events.push(event);
    const asks = eachSide((side) => asksOf(read.face, side, read.natural[side], value, tell));
    return { ...solveDots(asks, read.skin, value), guides, events };
  };
  if (arch !== "brow-length-share" || pins.some(({ dot }) => dot === "upperArch")) {
    return { settled, solution: solve(settled.value) };
  }
  const divided = unlessRefused(
    () => solve(settled.value),
    (code) => code === "no-solution",
  );
  const [inner, outer] = limitsFor(read.face, lead);
  const place = divided && archOf(divided, lead);
  const limit = place !== undefined && place < inner.distance ? inner : outer;
  if (divided && place !== undefined) {
    if (isChosen || (place >= inner.distance && place <= outer.distance)) {
      return { settled, solution: divided };
    }
  }
  const { convention } = limit;
  const value = {
    ...settled.value,
    arch: convention,
    ...(convention === "eye-width-share" ? { eyeWidthShare: LIMBUS_SHARE } : {}),
  };
  const solution = solve(value);
  const said = { limit: convention, asked, share: ledShare(solution, read, lead) };
  const why: Note<ReasonCode> =
    place === undefined
      ? reason("arch-share-nowhere", said)
      : reason("arch-share-beyond", { ...said, distance: Math.abs(place - limit.distance) });
  return { settled: { value, reasons: [...settled.reasons, why] }, solution };
}

/** The guides that were chosen, of both sides. */
function guidesOf(
  face: PlannableFace,
  { start, arch, tail, eyeWidthShare: share }: SettledChoices,
): PlannedDots["guides"] {
  const chosen = [start, arch, tail].filter(isGuide);
  return eachSide((side) =>
    chosen.map((convention) =>
      guideOn(requireGuideLandmarks(face, convention), side, convention, share),
    ),
  );
}

/** The limits of both sides as the brow that leads has them. */
function limitsFor(face: PlannableFace, lead: Lead): readonly [inner: ArchLimit, outer: ArchLimit] {
  const own = eachSide((side) => archLimits(face, side));
  const led = (limit: "inner" | "outer"): ArchLimit => ({
    convention: own.right[limit].convention,
    distance: ledBy(
      lead,
      eachSide((side) => own[side][limit].distance),
    ),
  });
  return [led("inner"), led("outer")];
}

function archOf({ dots }: Solution, lead: Lead): number {
  const side = LEADS[lead][0];
  return placeOnSide(dots[side].upperArch, side).distance;
}

function ledShare({ dots }: Solution, { skin }: FaceRead, lead: Lead): number {
  const { upperStart, upperArch, tailEnd } = dots[LEADS[lead][0]];
  return shareOf(byRuler(upperStart, upperArch, skin), byRuler(upperArch, tailEnd, skin));
}
