import { distance, fitCircle, fitEllipse } from "../geometry/index.js";
import { BY_HAND } from "../landmarks/internal.js";
import {
  flatPoint,
  type Length,
  length,
  type Measured,
  measured,
  measuredPoint,
  type Polyline,
  propagate,
  type Propagated,
  type Scale,
} from "../units/index.js";
import {
  chiSquareQuantile,
  refusingAs,
  requireNames,
  requirePolyline,
  requirePositive,
  scaleNote,
  toDegrees,
} from "../units/internal.js";
import { requireBaseline, type SeenWidth } from "./baseline.js";
import { type ReferenceOptions, scaleOfKnown } from "./reference-depth.js";

/** What is known of a marker, beyond its diameter: as of a reference, beyond its length. */
export type MarkerOptions = ReferenceOptions;

/**
 * The scale of a photo from points on the rim of a round sticker: two opposite ones, or three and more
 * anywhere round it.
 *
 * With five or more, a rim that is an ellipse shows a tilted sticker: its longer axis, which the tilt
 * does not shorten, is used, and the tilt is noted.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `out-of-range`; `ill-conditioned` where the points
 * do not settle the diameter to a fifth
 *
 * @example
 * ```ts
 * import { mm, px } from "brow-geometry";
 * import { scaleFromMarker } from "brow-geometry/calibration";
 * const rim = px([[560, 200], [520, 240], [480, 200], [520, 160], [548, 228]]);
 * const scale = scaleFromMarker(rim, mm(10), { placement: px(0.5) });
 * scale.factor; // → 0.125
 * scale.u; // → 0.0007
 * ```
 */
export function scaleFromMarker(
  rim: Polyline<"px">,
  diameter: Length<"mm">,
  options: MarkerOptions = {},
): Scale {
  return refusingAs("scaleFromMarker", () => {
    requireNames("options", options, ["u", "placement", "depth"]);
    requirePolyline("rim", rim, 2);
    requirePositive("diameter", diameter);
    const known = measured<number>(diameter, options.u ?? 0);
    const width = circleWidth(rim);
    const placement = options.placement ?? (BY_HAND * width) / diameter;
    if (options.placement !== undefined) requirePositive("placement", placement);
    const { seen, notes } = seenWidth(rim, placement);
    requireBaseline("rim", rim, seen);
    return scaleOfKnown("marker", known, seen, options.depth, notes);
  });
}

/** Diameter of the marker in the photo, with notes on it. */
function seenWidth(rim: Polyline<"px">, placement: number): SeenWidth {
  const tilt = tiltOf(rim, placement);
  if (tilt !== undefined) {
    return {
      seen: widthWith(rim, placement, ellipseWidth),
      notes: [scaleNote("marker-tilted", { tilt })],
    };
  }
  const { value, u } = widthWith(rim, placement, circleWidth);
  const times = scatterOf(rim, placement);
  return {
    seen: measured(value, times * u),
    notes: times > 1 ? [scaleNote("rim-scatters", { times })] : [],
  };
}

function widthWith(
  rim: Polyline<"px">,
  placement: number,
  measure: (rim: Polyline<"px">) => number,
): Measured {
  const { value, u } = overRim(rim, placement, (points) => ({ width: measure(points) }));
  return measured(value.width, u.width);
}

/** Diameter of the rim, taken as a circle. */
function circleWidth(rim: Polyline<"px">): number {
  const [from, to] = rim;
  return rim.length === 2 && from !== undefined && to !== undefined
    ? distance(from, to)
    : 2 * fitCircle(rim).radius;
}

/** A circle seen at a slant keeps its diameter across the slant only. */
function ellipseWidth(rim: Polyline<"px">): number {
  return 2 * fitEllipse(rim).semiMajor;
}

/** Probability with which a round rim is taken to be round, and good points to be good. */
const ACCEPTANCE = 0.99;

/** How many times the placement's uncertainty the points really lie off a circle, at least 1. */
function scatterOf(rim: Polyline<"px">, placement: number): number {
  const freedom = rim.length - 3;
  if (freedom < 1) return 1;
  const ratio = fitCircle(rim).sumOfSquares / placement ** 2;
  return ratio > chiSquareQuantile(ACCEPTANCE, freedom) ? Math.sqrt(ratio / freedom) : 1;
}

/** An ellipse has five numbers: with fewer points none shows. */
const ENOUGH_FOR_ELLIPSE = 5;

/** By how many degrees a marker is tilted, where its rim shows it. */
function tiltOf(rim: Polyline<"px">, placement: number): number | undefined {
  if (rim.length < ENOUGH_FOR_ELLIPSE || !surrounds(rim)) return undefined;
  const { value, covariance } = overRim(rim, placement, flatness);
  const [[xx = 0, xy = 0] = [], [, yy = 0] = []] = covariance;
  const { along, across } = value;
  const square =
    (yy * along ** 2 - 2 * xy * along * across + xx * across ** 2) / (xx * yy - xy * xy);
  if (!(square > chiSquareQuantile(ACCEPTANCE, 2))) return undefined;
  const { semiMajor, semiMinor } = fitEllipse(rim);
  return toDegrees(Math.acos(semiMinor / semiMajor));
}

/** How flat a rim is, along twice the direction's angle: that has no jump where the rim is round. */
function flatness(rim: Polyline<"px">): { readonly along: number; readonly across: number } {
  const { semiMajor, semiMinor, major } = fitEllipse(rim);
  const size = (semiMajor - semiMinor) / (semiMajor + semiMinor);
  return { along: size * (major[0] ** 2 - major[1] ** 2), across: size * 2 * major[0] * major[1] };
}

/** Whether points lie all round their circle's centre: only then do they tell how round it is. */
function surrounds(rim: Polyline<"px">): boolean {
  const { centre } = fitCircle(rim);
  const angles = rim
    .map(([x, y]) => Math.atan2(y - centre[1], x - centre[0]))
    .sort((one, other) => one - other);
  const gaps = angles.map((angle, index) => {
    const next = angles[index + 1];
    return next === undefined ? (angles[0] ?? 0) + 2 * Math.PI - angle : next - angle;
  });
  return Math.max(...gaps) < Math.PI;
}

/** A measure of the rim, with the uncertainty that placing its points gives it. */
function overRim<Result extends { readonly [Name in keyof Result]: number }>(
  rim: Polyline<"px">,
  placement: number,
  measure: (rim: Polyline<"px">) => Result,
): Propagated<Result> {
  const inputs = Object.fromEntries(
    rim.map(([x, y], index) => [
      `rim${index}`,
      measuredPoint(flatPoint<"px">(x, y), length(placement)),
    ]),
  );
  return propagate((points) => measure(Object.values(points)), inputs, { linearity: "assumed" });
}
