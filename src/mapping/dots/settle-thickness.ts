import { heightOver } from "../../geometry/internal.js";
import { type Brow, landmarkUncertainty, type Skin } from "../../landmarks/index.js";
import { type NaturalDots, type Station, type StationThickness } from "../../proportions/index.js";
import {
  placeAtShare,
  BORDER_END,
  STATION_THICKNESS,
  STATIONS,
} from "../../proportions/internal.js";
import { type Length, length, type Note, type Sides } from "../../units/index.js";
import { keysOf, SIDES } from "../../units/internal.js";
import { type Lead, ledSides } from "../choices/choice-tables.js";
import { isHair } from "./is-hair.js";
import type { PlannableFace } from "./plannable-face.js";
import { reason, type ReasonCode } from "./notes.js";
import type { Settled } from "./planned-dots.js";

/** Borders nearer than this do not tell a thickness: they meet there. Ours, in mm. */
const LEAST = 1;

/** Thickness that is known to no worse than this tells where a brow is fullest. Ours, in mm. */
const TELLING = 0.5;

/** How thick the planned brows are: as chosen, as they grow, or as brows usually are. */
export function settleThickness(
  face: PlannableFace,
  natural: Sides<NaturalDots>,
  skin: Skin,
  lead: Lead,
  frontShare: number,
  chosen: StationThickness | undefined,
): Settled<StationThickness> {
  if (chosen !== undefined) {
    return { value: chosen, reasons: [reason("thickness-chosen", { ...chosen })] };
  }
  const grown = grownThickness(face, natural, skin, lead, frontShare);
  const value = plannedThickness(face, grown);
  return { value, reasons: [whyThickness(face, grown, value)] };
}

function whyThickness(
  face: PlannableFace,
  grown: Partial<StationThickness>,
  value: StationThickness,
): Note<ReasonCode> {
  const assumed = keysOf(STATIONS).filter((station) => grown[station] === undefined);
  if (assumed.length > 0) return reason("thickness-assumed", { ...value, assumed });
  if (!isTelling(face)) return reason("thickness-usual", { ...value, u: uOfGrown(face) });
  const isGrown = keysOf(STATIONS).every((station) => value[station] === grown[station]);
  return reason(isGrown ? "thickness-natural" : "thickness-evened", { ...value });
}

/**
 * How thick brows are planned that grow so thick where their borders tell. Where these are too uncertain
 * to tell a profile, and at stations that they do not tell, as brows usually are: fullest at the front and
 * thinning towards the tail (trade practice, no source), on the whole as thick as they grow. Never
 * thickening towards the arch: stations that would share their mean.
 */
export function plannedThickness(
  face: PlannableFace,
  grown: Partial<StationThickness>,
): StationThickness {
  const known = keysOf(STATIONS).filter((station) => grown[station] !== undefined);
  const sumOf = (thickness: Partial<StationThickness>): number =>
    known.reduce((sum, station) => sum + (thickness[station] ?? 0), 0);
  const usual = known.length === 0 ? 1 : sumOf(grown) / sumOf(STATION_THICKNESS);
  const told = isTelling(face) ? grown : {};
  const at = (station: Station): number => told[station] ?? usual * STATION_THICKNESS[station];
  return neverGrowing(at("start"), at("body"), at("arch"));
}

/** Whether borders are those of hair, known well enough to tell where a brow is fullest. */
function isTelling(face: PlannableFace): boolean {
  return uOfGrown(face) <= TELLING && SIDES.some((side) => isHair(face, side));
}

/** Standard uncertainty of a thickness that is read between two borders. */
function uOfGrown(face: PlannableFace): number {
  return Math.SQRT2 * landmarkUncertainty(face, "brow");
}

/** The thickness nearest to a given one, in squares, that does not grow outwards. */
function neverGrowing(start: number, body: number, arch: number): StationThickness {
  const mean = (start + body + arch) / 3;
  const most = Math.max(start, (start + body) / 2, mean);
  const least = Math.min(arch, (body + arch) / 2, mean);
  return {
    start: length(most),
    body: length(Math.min(Math.max(body, least), most)),
    arch: length(least),
  };
}

/** How thick the brows that lead are as they grow, each station where their borders tell. */
export function grownThickness(
  face: PlannableFace,
  natural: Sides<NaturalDots>,
  skin: Skin,
  lead: Lead,
  frontShare: number,
): Partial<StationThickness> {
  return meanThickness(
    ledSides(lead).map((side) => stationsOf(face[side].brow, natural[side], skin, frontShare)),
  );
}

/** The mean of the sides that lead, where all of them tell it. */
export function meanThickness(
  sides: readonly Partial<StationThickness>[],
): Partial<StationThickness> {
  const known: { [At in Station]?: Length<"mm"> } = {};
  for (const station of keysOf(STATIONS)) {
    let sum = 0;
    for (const stations of sides) sum += stations[station] ?? Number.NaN;
    if (!Number.isNaN(sum)) known[station] = length(sum / sides.length);
  }
  return known;
}

/** Thickness at start, body and arch of the brow as it grows, each where its borders tell. */
export function stationsOf(
  { upper, lower }: Brow<"mm">,
  { dots, arch }: NaturalDots,
  skin: Skin,
  frontShare: number,
): Partial<StationThickness> {
  if (lower === undefined) return {};
  const { upperStart, tailEnd } = dots;
  const archDot =
    arch.kind === "flat" ? placeAtShare(upper, upperStart, tailEnd, skin, frontShare).at : arch.at;
  const bodyX = length<"mm">((upperStart[0] + archDot[0]) / 2);
  const at = { start: upperStart[0], body: bodyX, arch: archDot[0] };
  const told: { [At in Station]?: Length<"mm"> } = {};
  for (const station of keysOf(at)) {
    const x = length<"mm">(at[station]);
    const top = heightOver(x, upper, BORDER_END) ?? Number.NaN;
    const thickness = top - (heightOver(x, lower, BORDER_END) ?? Number.NaN);
    if (thickness >= LEAST) told[station] = length(thickness);
  }
  return told;
}
