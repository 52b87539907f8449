import { heightOver } from "../../geometry/internal.js";
import type { Brow, Skin } from "../../landmarks/index.js";
import {
  archAtShare,
  type NaturalDots,
  type Station,
  type StationThickness,
} from "../../proportions/index.js";
import { STATION_THICKNESS, STATIONS } from "../../proportions/internal.js";
import { type Length, length, type Sides } from "../../units/index.js";
import { keysOf } from "../../units/internal.js";
import { type Lead, ledSides } from "../choices/choice-tables.js";
import type { PlannableFace } from "./plannable-face.js";
import { reason } from "./notes.js";
import type { Settled } from "./planned-dots.js";

/** Borders nearer than this do not tell a thickness: they meet there. Ours, in mm. */
const LEAST = 1;

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
  const value: StationThickness = { ...STATION_THICKNESS, ...grown };
  const assumed = keysOf(STATIONS).filter((station) => grown[station] === undefined);
  const assumption = reason("thickness-assumed", { ...value, assumed });
  return {
    value,
    reasons: [assumed.length === 0 ? reason("thickness-natural", { ...value }) : assumption],
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
  const grown = ledSides(lead).map((side) =>
    stationsOf(face[side].brow, natural[side], skin, frontShare),
  );
  const known: { [At in Station]?: Length<"mm"> } = {};
  for (const station of keysOf(STATIONS)) {
    const thickness = meanOf(grown.map((stations) => stations[station]));
    if (thickness !== undefined) known[station] = thickness;
  }
  return known;
}

/** Thickness at start, body and arch of the brow as it grows, each where its borders tell. */
function stationsOf(
  { upper, lower }: Brow<"mm">,
  { dots, arch }: NaturalDots,
  skin: Skin,
  frontShare: number,
): { readonly [At in Station]?: Length<"mm"> | undefined } {
  if (lower === undefined) return {};
  const { upperStart, tailEnd } = dots;
  const archDot =
    arch.kind === "flat" ? archAtShare(upper, upperStart, tailEnd, skin, frontShare).at : arch.at;
  const bodyX = length<"mm">((upperStart[0] + archDot[0]) / 2);
  const under = (x: number, from: number | undefined): Length<"mm"> | undefined => {
    const to = heightOver(length<"mm">(x), lower);
    if (from === undefined || to === undefined || from - to < LEAST) return undefined;
    return length(from - to);
  };
  return {
    start: under(upperStart[0], upperStart[1]),
    body: under(bodyX, heightOver(bodyX, upper)),
    arch: under(archDot[0], archDot[1]),
  };
}

/** The mean of the sides that lead; unknown where one of them is. */
function meanOf(values: readonly (Length<"mm"> | undefined)[]): Length<"mm"> | undefined {
  const known = values.filter((value) => value !== undefined);
  if (known.length < values.length) return undefined;
  return length(known.reduce<number>((sum, value) => sum + value, 0) / known.length);
}
