import { rootBetween } from "../../geometry/internal.js";
import { type Skin } from "../../landmarks/index.js";
import { byRuler } from "../../landmarks/internal.js";
import { pointOnSide, type SidePlace } from "../../symmetry/index.js";
import { eachSide, type Sides } from "../../units/index.js";
import { refuse, shownValue } from "../../units/internal.js";
import { ledBy } from "../choices/choice-tables.js";
import type { SettledChoices } from "./planned-dots.js";
import type { LedDot, SettledDot } from "./settle-dot.js";

/** Moves both arches sideways to the front share: evening heights has bent the border where it was found. */
export function evenShare(
  arches: Sides<LedDot>,
  starts: Sides<SidePlace>,
  tailEnds: Sides<SidePlace>,
  skin: Skin,
  { lead, frontShare }: SettledChoices,
): Sides<SettledDot> {
  const distances = eachSide((side) => {
    const start = pointOnSide(starts[side], side);
    const tailEnd = pointOnSide(tailEnds[side], side);
    const { height, heightAt } = arches[side];
    const excess = (at: number): number => {
      const arch = pointOnSide({ distance: at, height: heightAt(at) }, side);
      const front = byRuler(start, arch, skin);
      return front - frontShare * (front + byRuler(arch, tailEnd, skin));
    };
    const even = rootBetween(starts[side].distance, tailEnds[side].distance, excess);
    if (even === undefined) {
      const need = `a place that gives the front ${shownValue(frontShare)} of the whole`;
      refuse("no-solution", `${side} upperArch`, height, need);
    }
    return even;
  });
  const even = ledBy(lead, distances);
  return eachSide((side) => {
    const arch = arches[side];
    return { ...arch, distance: even, height: arch.heightAt(even) };
  });
}
