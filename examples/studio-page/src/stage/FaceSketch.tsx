import type { Face } from "brow-geometry";
import type { Polyline } from "brow-geometry/units";
import type { Spot } from "./box.js";
import { pathOf, type Place } from "./place.js";

interface SketchProps {
  readonly face: Face<"mm"> | Face<"px">;
  readonly place: Place;
}

/** Eyes and nose in thin lines, where there is no photo to see them on. */
export function FaceSketch({ face, place }: SketchProps) {
  return (
    <g class="sketch" aria-hidden="true">
      {[face.right, face.left].map((side) => {
        const { endocanthion: inner, exocanthion: outer, alare } = side;
        if (inner === undefined || outer === undefined) return null;
        const [from, to] = [place(inner), place(outer)];
        return (
          <>
            <path d={side.upperLid ? lidOf(side.upperLid, place) : lens(from, to, 0.34)} />
            <path d={side.lowerLid ? lidOf(side.lowerLid, place) : lens(from, to, -0.16)} />
            <circle {...irisOf(side.pupil && place(side.pupil), from, to)} />
            {alare && <path d={wing(place(alare), from, to)} />}
          </>
        );
      })}
    </g>
  );
}

function lidOf(lid: Polyline<"mm"> | Polyline<"px">, place: Place): string {
  return pathOf(lid.map((point) => place(point)));
}

/** A lid from corner to corner, that rises by a share of the eye's width. */
function lens([x, y]: Spot, [toX, toY]: Spot, share: number): string {
  const rise = 2 * share * Math.hypot(toX - x, toY - y) * 0.6;
  return `M${x} ${y}Q${(x + toX) / 2} ${(y + toY) / 2 - rise} ${toX} ${toY}`;
}

function irisOf(pupil: Spot | undefined, [x, y]: Spot, [toX, toY]: Spot) {
  const width = Math.hypot(toX - x, toY - y);
  const [cx, cy] = pupil ?? [(x + toX) / 2, (y + toY) / 2 - 0.05 * width];
  return { cx, cy, r: 0.2 * width };
}

/** The nose wing, open towards the middle. */
function wing([x, y]: Spot, [innerX]: Spot, [outerX]: Spot): string {
  const size = 0.16 * Math.abs(outerX - innerX);
  const out = Math.sign(outerX - innerX);
  return `M${x - out * size} ${y - 1.4 * size}Q${x + out * size * 0.4} ${y - size} ${x} ${y}Q${x - out * size * 0.2} ${y + size} ${x - out * 1.6 * size} ${y + 0.8 * size}`;
}
