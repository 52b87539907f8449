import type { NaturalDots, StationThickness } from "../../proportions/index.js";
import {
  dotsAnew,
  edgeOfHair,
  readFromEye,
  readSide,
  type SideReading,
  type SideToRead,
} from "../../proportions/internal.js";
import type { Side } from "../../units/index.js";
import { LEADS } from "../choices/choice-tables.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { stationsOf } from "../dots/settle-thickness.js";
import { asksOf, type SideAsks } from "../dots/solve-dots.js";
import type { Variation } from "./variation.js";

/** What grows on one side, what it asks for, and how thick it is where it leads. */
export interface GrownSide {
  readonly natural: NaturalDots;
  readonly toRead: SideToRead & { readonly landmarks: PlannableFace["left"] };
  readonly reading: SideReading;
  readonly asks: SideAsks;
  readonly stations: Partial<StationThickness>;
}

export function readGrown(
  { choices }: PlannedDots,
  side: Side,
  { face, skin }: Variation,
  natural: NaturalDots,
  known?: SideReading,
): GrownSide {
  const landmarks = face[side];
  const toRead = { side, landmarks, skin, edge: edgeOfHair(landmarks.brow, skin) };
  const leads: readonly Side[] = LEADS[choices.lead];
  return {
    natural,
    toRead,
    reading: readSide(natural.dots, toRead, known),
    asks: asksOf(face, side, natural, choices),
    stations: leads.includes(side)
      ? stationsOf(landmarks.brow, natural, skin, choices.frontShare)
      : {},
  };
}

/** Reads again only what is not the same on a face as it may truly be. */
export function readAnew(plan: PlannedDots, own: GrownSide, variation: Variation): GrownSide {
  const { side, landmarks: known, skin } = own.toRead;
  const landmarks = variation.face[side];
  if (variation.skin !== skin || landmarks.brow !== known.brow) {
    const isSame = landmarks.brow.upper === known.brow.upper;
    const natural = dotsAnew(landmarks.brow, plan.natural[side], isSame);
    // Tape lies along the upper border.
    const along = isSame && variation.skin === skin ? own.reading : undefined;
    return readGrown(plan, side, variation, natural, along);
  }
  if (landmarks === known) return own;
  const { natural, reading } = own;
  const toRead = { ...own.toRead, landmarks };
  return {
    ...own,
    toRead,
    reading: { ...reading, ...readFromEye(natural.dots, toRead) },
    asks: asksOf(variation.face, side, natural, plan.choices),
  };
}
