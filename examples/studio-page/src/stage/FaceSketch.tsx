import type { Face } from "brow-geometry";
import { useId } from "preact/hooks";
import type { Spot } from "./box.js";
import type { Place } from "./place.js";
import { SIDES } from "./sides.js";

interface SketchProps {
  readonly face: Face<"mm"> | Face<"px">;
  readonly place: Place;
}

/** Eyes and nose in thin lines, where there is no photo to see them on. */
export function FaceSketch({ face, place }: SketchProps) {
  const id = useId();
  return (
    <g class="sketch" aria-hidden="true">
      {SIDES.map((side) => {
        const { endocanthion, exocanthion, alare, upperLid, lowerLid, pupil } = face[side];
        if (endocanthion === undefined || exocanthion === undefined) return null;
        const [inner, outer] = [place(endocanthion), place(exocanthion)];
        const upper = upperLid?.map((point) => place(point)) ?? lid(inner, outer, 0.2);
        const lower = lowerLid?.map((point) => place(point)) ?? lid(inner, outer, -0.1);
        const eye = `${curveOf(upper)}L${curveOf([...lower].reverse()).slice(1)}Z`;
        return (
          <g key={side}>
            <clipPath id={`${id}${side}`}>
              <path d={eye} />
            </clipPath>
            <circle
              clip-path={`url(#${id}${side})`}
              {...irisOf(pupil && place(pupil), inner, outer)}
            />
            <path d={eye} />
            {alare && <path d={wing(place(alare), inner, outer)} />}
          </g>
        );
      })}
    </g>
  );
}

/** A lid from corner to corner, which rises by a share of the eye's width. */
function lid([x, y]: Spot, [toX, toY]: Spot, share: number): readonly Spot[] {
  const rise = share * Math.hypot(toX - x, toY - y);
  return [0, 0.25, 0.5, 0.75, 1].map((at): Spot => [
    x + at * (toX - x),
    y + at * (toY - y) - 4 * at * (1 - at) * rise,
  ]);
}

/** A smooth line through the middles of a polyline's legs. */
function curveOf(spots: readonly Spot[]): string {
  const legs = spots.slice(1, -1).map(([x, y], index): string => {
    const [nextX, nextY] = spots[index + 2] ?? [x, y];
    const isLast = index === spots.length - 3;
    return isLast
      ? `Q${x} ${y} ${nextX} ${nextY}`
      : `Q${x} ${y} ${(x + nextX) / 2} ${(y + nextY) / 2}`;
  });
  return `M${spots[0]?.join(" ") ?? "0 0"}${legs.join("")}`;
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
