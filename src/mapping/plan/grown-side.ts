import type { NaturalDots, StationThickness } from "../../proportions/index.js";
import {
  dotsAnew,
  edgeOfHair,
  readFromEye,
  readSide,
  type SideReading,
  type SideToRead,
} from "../../proportions/internal.js";
import type { Skin } from "../../landmarks/index.js";
import { type Tape, tapeOn } from "../../landmarks/internal.js";
import type { Side } from "../../units/index.js";
import { keysOf } from "../../units/internal.js";
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
  readonly tape: Tape;
  readonly reading: SideReading;
  readonly asks: SideAsks;
  readonly stations: Partial<StationThickness>;
}

export function readGrown(
  { choices }: PlannedDots,
  side: Side,
  { face, skin }: Variation,
  natural: NaturalDots,
  tape: Tape = tapeOn(skin, face[side].brow.upper),
  known?: SideReading,
): GrownSide {
  const landmarks = face[side];
  const toRead = { side, landmarks, skin, edge: edgeOfHair(landmarks.brow, skin, tape) };
  const leads: readonly Side[] = LEADS[choices.lead];
  return {
    natural,
    toRead,
    tape,
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
  const archOff = variation.arches?.[side] ?? 0;
  if (archOff !== 0 || !isAsDeep(variation.skin, skin) || landmarks.brow !== known.brow) {
    const isSame = archOff === 0 && landmarks.brow.upper === known.brow.upper;
    const natural = dotsAnew(landmarks.brow, plan.natural[side], isSame, archOff);
    if (variation.skin !== skin) return readGrown(plan, side, variation, natural);
    // Tape lies along the upper border.
    return readGrown(plan, side, variation, natural, own.tape, isSame ? own.reading : undefined);
  }
  if (landmarks === known && variation.skin === skin) return own;
  const { natural, reading } = own;
  const toRead = { ...own.toRead, landmarks, skin: variation.skin };
  return {
    ...own,
    toRead,
    reading: { ...reading, ...readFromEye(natural.dots, toRead) },
    asks: isOnlyLid(landmarks, known)
      ? own.asks
      : asksOf(variation.face, side, natural, plan.choices),
  };
}

/** Whether sides differ in the upper lid at most, which nobody asks for. */
function isOnlyLid(one: PlannableFace["left"], other: PlannableFace["left"]): boolean {
  return keysOf(one).every((name) => name === "upperLid" || one[name] === other[name]);
}

/** Whether skins differ in how far eye corners lie behind them at most. */
function isAsDeep(one: Skin, other: Skin): boolean {
  if (one.kind !== "modelled" || other.kind !== "modelled") return one === other;
  return one.width === other.width;
}
