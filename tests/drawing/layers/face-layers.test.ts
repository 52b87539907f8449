import {
  drawPlan,
  mm,
  planOnPhoto,
  px,
  requirePlannable,
  scaleFromReference,
  type Side,
  toPhoto,
  turnToFront,
} from "brow-geometry";
import { describe, expect, it } from "vitest";
import { allElements } from "../../support/parse-xml.js";
import { photograph } from "../../support/photograph.js";
import { raisedHead, syntheticHead, turnedHead } from "../../support/synthetic-head.js";
import { pictureOf } from "../picture.js";

/** All places of the strokes in a group of a picture, stroke by stroke. */
function strokesOf(svg: string, name: string): readonly (readonly (readonly number[])[])[] {
  const groups = pictureOf(svg).elements.filter(({ attributes }) => attributes["class"] === name);
  return groups.flatMap((group) =>
    allElements(group).flatMap(({ attributes: { d } }) =>
      d === undefined
        ? []
        : [
            Array.from(d.matchAll(/(-?[\d.]+)[ ,](-?[\d.]+)/g), ([, x, y]) => [
              Number(x),
              Number(y),
            ]),
          ],
    ),
  );
}

describe("the iris of a head that was turned and lowered", () => {
  const pose = { factor: 0.1, tilt: 0, at: [1000, 900] } as const;
  const photo = requirePlannable(photograph(turnedHead(raisedHead(syntheticHead(), -20), 9), pose));
  const scale = scaleFromReference(px([0, 0]), px([500, 0]), mm(50));
  const plan = planOnPhoto(photo, turnToFront(photo, scale));
  const irises = strokesOf(drawPlan(plan), "eye").filter((stroke) => stroke.length > 12);

  it.each(["right", "left"] as const)("lies round its pupil on the %s side", (side: Side) => {
    const { pupil, limbusMedial, limbusLateral } = plan.face[side];
    if (!pupil || !limbusMedial || !limbusLateral || !plan.frame) return expect.fail("no iris");
    const [x, y] = toPhoto(pupil, plan.frame);
    const away = irises
      .flat()
      .map(([atX = 0, atY = 0]) => Math.hypot(atX - x, atY - y))
      .filter((distance) => distance < 150);
    // A radius of 5.86 mm at 10 px for a millimetre, foreshortened by up to cos 20° one way, cos 9° the other.
    expect(away.length).toBeGreaterThan(10);
    expect(Math.min(...away)).toBeGreaterThan(58.6 * 0.9);
    expect(Math.max(...away)).toBeLessThan(58.6 * 1.03);
  });
});
