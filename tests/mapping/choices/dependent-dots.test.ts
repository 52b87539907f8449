import { type Choices, type Dot, otherSide, type Pin, planDots, type Side } from "brow-geometry";
import { DEPENDENT_DOTS } from "brow-geometry/mapping";
import { DOT_NAMES } from "../../../src/landmarks/internal.js";
import { flatPoint } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { syntheticFace } from "../../support/synthetic-face.js";

const face = syntheticFace();

const ARCHES = ["natural", "brow-length-share"] as const;
const TAILS = ["natural", "level-with-lower-start", "level-with-upper-start"] as const;

/** The dots of each side that move when one dot is pinned half a millimetre from where it was. */
function followers(side: Side, dot: Dot, choices: Choices): Record<Side, Set<Dot>> {
  const [x, y] = planDots(face, choices).dots[side][dot];
  const plan = (outward: number, up: number) => {
    const at = flatPoint<"mm">(x + (side === "left" ? outward : -outward), y + up);
    const pins: Pin[] = [{ side, dot, at }];
    return planDots(face, { ...choices, pins }).dots;
  };
  const [before, after] = [plan(0, 0), plan(0.3, 0.5)];
  const moved = (of: Side): Set<Dot> =>
    new Set(
      DOT_NAMES.filter(
        (one) =>
          Math.hypot(
            after[of][one][0] - before[of][one][0],
            after[of][one][1] - before[of][one][1],
          ) > 1e-9,
      ),
    );
  return { right: moved("right"), left: moved("left") };
}

describe("DEPENDENT_DOTS", () => {
  it.each(
    DOT_NAMES.flatMap((dot) => (["right", "left"] as const).map((side) => [side, dot] as const)),
  )("names those and only those that follow the %s %s under some choices", (side, dot) => {
    const seen = { same: new Set<Dot>(), other: new Set<Dot>() };
    for (const arch of ARCHES) {
      for (const tailHeight of TAILS) {
        const moved = followers(side, dot, { arch, tailHeight });
        moved[side].forEach((one) => seen.same.add(one));
        moved[otherSide(side)].forEach((one) => seen.other.add(one));
      }
    }
    seen.same.delete(dot);
    const sorted = (dots: Iterable<Dot>): Dot[] => [...dots].sort();
    expect(sorted(seen.same)).toEqual(sorted(DEPENDENT_DOTS[dot].sameSide));
    expect(sorted(seen.other)).toEqual(sorted(DEPENDENT_DOTS[dot].otherSide));
  });
});
