import { DOTS, drawPlan } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { allElements } from "../../support/parse-xml.js";
import { PICTURED_PLANS } from "../pictured-plans.js";
import { pathSpots, pictureOf, withClass } from "../picture.js";

type Spot = readonly [x: number, y: number];

/** Spots along the cubic curves of a path, close together. */
function along(d: string): readonly Spot[] {
  const [start, ...controls] = pathSpots(d);
  const found: Spot[] = [];
  let from = start;
  for (let index = 0; index + 2 < controls.length; index += 3) {
    const [one, two, to] = controls.slice(index, index + 3);
    if (!from || !one || !two || !to) break;
    for (let step = 0; step <= 200; step += 1) {
      const t = step / 200;
      const [a, b, c, e] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t ** 2 * (1 - t), t ** 3];
      found.push([
        a * from[0] + b * one[0] + c * two[0] + e * to[0],
        a * from[1] + b * one[1] + c * two[1] + e * to[1],
      ]);
    }
    from = to;
  }
  return found;
}

describe.each(PICTURED_PLANS)("dots of a planned brow: %s", (_, plan) => {
  const picture = pictureOf(drawPlan(plan));
  const millimetre = plan.frame === undefined ? 1 : 1 / plan.frame.scale.factor;

  it("are all drawn, filled on the upper border, hollow on the lower", () => {
    const dots = withClass(picture, "dot").map(({ attributes }) => attributes);
    for (const side of ["right", "left"] as const) {
      const drawn = dots.filter((dot) => dot["data-side"] === side);
      expect(drawn.map((dot) => dot["data-dot"])).toEqual(Object.keys(DOTS));
      const fills = Object.values(DOTS).map(({ border }, index) => [border, drawn[index]?.fill]);
      expect(new Set(fills.map((fill) => fill.join(" "))).size).toBe(2);
    }
  });

  it.each(["right", "left"])("lie in their middle on the outline of the %s brow", (side) => {
    const [group] = withClass(picture, "planned").filter(({ attributes }) =>
      attributes.class?.includes(side),
    );
    const d =
      group === undefined
        ? ""
        : (allElements(group).find((one) => one.name === "path")?.attributes.d ?? "");
    const outline = along(d);
    for (const { attributes } of withClass(picture, "dot")) {
      if (attributes["data-side"] !== side) continue;
      const corners = pathSpots(attributes.d ?? "");
      const [x, y] =
        corners.length === 0
          ? [Number(attributes.cx), Number(attributes.cy)]
          : [0, 1].map(
              (axis) =>
                corners.reduce((sum, spot) => sum + (spot[axis] ?? NaN), 0) / corners.length,
            );
      const away = Math.min(
        ...outline.map((spot) => Math.hypot(spot[0] - (x ?? NaN), spot[1] - (y ?? NaN))),
      );
      // Far below what is seen: half of the outline's stroke is 0.3 mm wide. Steps along it are up to 0.2 mm.
      expect(away / millimetre, attributes["data-dot"]).toBeLessThan(0.12);
    }
  });
});
