import { heightOver } from "../../geometry/internal.js";
import type { Brow } from "../../landmarks/index.js";
import type { Registration } from "../../symmetry/index.js";
import { length, type Length, measured, type Point, type Polyline } from "../../units/index.js";
import { decideUnder } from "../../units/internal.js";
import type { JudgedOptions, ThicknessChange } from "./result.js";

/** Shares of the way along a brow at which its thickness is read. */
const SHARES = [0.1, 0.3, 0.5, 0.7, 0.9] as const;

/** Thickness of a brow as found, against its plan, along both. */
export function thicknessAlong(
  planned: Required<Brow<"mm">>,
  found: Required<Brow<"mm">>,
  { borderU, registration }: { readonly borderU: number; readonly registration: Registration },
  options: JudgedOptions,
): readonly ThicknessChange[] {
  return SHARES.flatMap((share): readonly ThicknessChange[] => {
    const [asked, is] = [thicknessAt(planned, share), thicknessAt(found, share)];
    if (asked === undefined || is === undefined) return [];
    const u = Math.hypot(Math.SQRT2 * borderU, registration.stretchU * is);
    const difference = measured<number>(is - asked, u);
    return [
      {
        share,
        planned: asked,
        found: measured<number>(is, u),
        difference,
        ...decideUnder(options.tolerances, "thickness", difference, options),
      },
    ];
  });
}

/** Upright, at a share of the way from start to tail end, sideways. */
function thicknessAt(
  { upper, lower }: Required<Brow<"mm">>,
  share: number,
): Length<"mm"> | undefined {
  const [from, to] = [xAt(upper, 0), xAt(upper, -1)];
  const x = length<"mm">(from + share * (to - from));
  const [top, bottom] = [heightOver(x, upper), heightOver(x, lower)];
  return top === undefined || bottom === undefined ? undefined : length(top - bottom);
}

function xAt(border: Polyline<"mm">, end: 0 | -1): number {
  return (border.at(end) as Point<"mm">)[0];
}
