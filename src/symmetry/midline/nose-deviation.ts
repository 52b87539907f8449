import { distance, distanceAlongLine, distanceFromLine } from "../../geometry/index.js";
import type { FaceWith } from "../../landmarks/index.js";
import { leftIsPositive, senseOf } from "../../landmarks/internal.js";
import {
  type Decision,
  type DecisionOptions,
  type Length,
  type Measured,
  type Unit,
} from "../../units/index.js";
import {
  decisionOn,
  measuredAs,
  NOTICED_DEVIATION,
  refuse,
  refusingAs,
  toDegrees,
  within,
} from "../../units/internal.js";
import { midlineOf } from "./fit-midline.js";
import type { Midline } from "./midline.js";
import { biocularWidth, uncertaintyOf } from "./mirror-pairs.js";

/** How the nose runs against the midline, and whether it is to be called bent. */
export interface NoseDeviation {
  /** Degrees between sellion–subnasale and the midline; positive where subnasale lies towards the client's left. */
  readonly angle: Measured;
  /** Against what others notice. */
  readonly decision: Decision;
  /** True only where the deviation is proven to exceed what others notice. */
  readonly bent: boolean;
}

/** How {@link noseDeviation} and `eyeCant` work. */
export interface DeviationOptions<U extends Unit> extends DecisionOptions {
  /** Default: {@link fitMidline} of the face. */
  readonly midline?: Pick<Midline<U>, "line" | "tiltU">;
}

/**
 * How far the nose, from sellion to subnasale, deviates from the midline: named as bent only where
 * the angle exceeds 2.92° beyond its uncertainty.
 *
 * The tip of the nose is left out: a head turned by 4.6° makes a straight one look bent, sellion and
 * subnasale move by 0.15° for each degree only.
 *
 * Source of the limit: 160 raters, J Oral Maxillofac Surg 2015;73:1606–1614.
 *
 * @throws GeometryError `coincident-points`, and what {@link fitMidline} throws
 *
 * @example
 * ```ts
 * import { mm, noseDeviation } from "brow-geometry";
 * const { angle, bent } = noseDeviation({
 *   right: { endocanthion: mm([-16, 0]), exocanthion: mm([-44, 0]), cheilion: mm([-25, -66]) },
 *   left: { endocanthion: mm([16, 0]), exocanthion: mm([44, 0]), cheilion: mm([25, -66]) },
 *   midline: { sellion: mm([0, 2]), subnasale: mm([5, -44]) },
 * });
 * angle.value; // → 6.1
 * bent; // → true
 * ```
 */
export function noseDeviation<U extends Unit>(
  face: FaceWith<U, "endocanthion", "sellion" | "subnasale">,
  options: DeviationOptions<U> = {},
): NoseDeviation {
  return refusingAs("noseDeviation", () =>
    deviationFrom(options.midline ?? midlineOf(face), face, options),
  );
}

/** {@link noseDeviation} against a midline, asked for by another function. */
export function deviationFrom<U extends Unit>(
  { line, tiltU }: NonNullable<DeviationOptions<U>["midline"]>,
  face: FaceWith<U, "endocanthion", "sellion" | "subnasale">,
  options: DecisionOptions = {},
): NoseDeviation {
  const { sellion, subnasale } = face.midline;
  const size = distance(sellion, subnasale);
  if (size === 0) {
    refuse("coincident-points", "midline.subnasale", subnasale, "another point");
  }
  const down = distanceAlongLine(sellion, line) - distanceAlongLine(subnasale, line);
  const across = distanceFromLine(subnasale, line) - distanceFromLine(sellion, line);
  const leftwards = leftIsPositive(line.direction, senseOf(face)) ? across : 0 - across;
  const angle = measuredAs(
    toDegrees(Math.atan2(leftwards, down)),
    Math.hypot(noseU(face, size), tiltU),
  );
  const decision = decisionOn(angle, within(NOTICED_DEVIATION), options);
  return { angle, decision, bent: decision.outcome === "outside" };
}

/** Standard uncertainty of the direction of the nose, in degrees, from its two ends. */
function noseU<U extends Unit>(face: FaceWith<U, "endocanthion">, size: Length<U>): number {
  const width = biocularWidth(face) ?? size;
  const ends = (["sellion", "subnasale"] as const).map((name) => uncertaintyOf(face, name, width));
  return toDegrees(Math.hypot(...ends) / size);
}
