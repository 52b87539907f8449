import { mapFace, type PointMap, type Skin } from "../../landmarks/index.js";
import type { Polyline, Side } from "../../units/index.js";
import type { Pin } from "../choices/choices.js";
import type { PlannableFace } from "../dots/plannable-face.js";

/** A face as it may truly be, with its skin and the pins that were set on it. */
export interface Variation {
  readonly face: PlannableFace;
  readonly skin: Skin;
  readonly pins: readonly Pin[];
  /** How far towards the tail natural arches lie besides, in parts of what finding them is off. */
  readonly arches?: { readonly [Which in Side]?: number };
}

/** A face seen otherwise, with the pins that were set on it. */
export function seenBy(
  map: PointMap<"mm", "mm">,
  { face, skin: own, pins }: Variation,
  skin: Skin = own,
): Variation {
  return {
    face: mapFace<"mm", "mm">(face, map) as PlannableFace,
    skin,
    pins: pins.map((pin) => ({ ...pin, at: map(pin.at, "brow") })),
  };
}

/**
 * A face without what no reading and no midline looks at, such as the points of a whole mesh; landmarks in
 * one order, since sums in another differ in the last bits, and a record replays to the last one.
 */
export function onlyRead(plan: Variation): Variation {
  const { symmetricPoints: _, right, left, midline, ...rest } = plan.face;
  const face = { ...rest, right: sideRead(right), left: sideRead(left), midline: sorted(midline) };
  return { ...plan, face };
}

function sideRead(side: PlannableFace["left"]): PlannableFace["left"] {
  const { lowerLid: _, upperLid, ...read } = sorted(side);
  const [x] = side.pupil ?? side.exocanthion;
  return upperLid === undefined ? read : { ...read, upperLid: stretchAround(x, upperLid) };
}

function sorted<Part extends object>(part: Part): Part {
  const entries = Object.entries(part).sort(([one], [other]) => (one < other ? -1 : 1));
  return Object.fromEntries(entries) as Part;
}

/** The two points of a line on either side of an x, or of its nearer end, and one more beyond each. */
function stretchAround(x: number, line: Polyline<"mm">): Polyline<"mm"> {
  const [first, last] = [line[0]?.[0] ?? 0, line[line.length - 1]?.[0] ?? 0];
  const outwards = Math.sign(last - first);
  const next = line.findIndex((point) => outwards * (point[0] - x) > 0);
  const after = next < 0 ? line.length : next;
  return line.slice(Math.max(0, after - 2), Math.max(after + 2, 2));
}
