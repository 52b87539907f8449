import {
  drawPlan,
  planBrows,
  planOnPhoto,
  px,
  mm,
  requirePlannable,
  scaleFromReference,
  turnToFront,
} from "brow-geometry";
import type { PlanFinding } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { photograph } from "../../support/photograph.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { raisedHead, syntheticHead, turnedHead } from "../../support/synthetic-head.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { pictureOf } from "../picture.js";

const AGAIN = "Take the photo again";

function pictureWith(severity?: PlanFinding["severity"]) {
  const finding: PlanFinding = { code: "own", values: {}, text: "Too dark." };
  const findings = [severity === undefined ? finding : { ...finding, severity }];
  return pictureOf(drawPlan(planBrows(syntheticFace(), {}, { findings })));
}

describe("a retake", () => {
  it("is written across the picture, over both eyes, larger than anything else", () => {
    const picture = pictureWith("retake");
    const again = picture.texts.find(({ text }) => text === AGAIN);
    const others = picture.texts.filter(({ text }) => text !== AGAIN);
    if (again === undefined) return expect.fail("not written");
    expect(again.size).toBeGreaterThan(2 * Math.max(...others.map(({ size }) => size)));
    // The synthetic eyes lie on the level of 0, between 17 and 45 mm on either side.
    expect(again.box.x).toBeLessThan(-31);
    expect(again.box.x + again.box.width).toBeGreaterThan(31);
    expect(again.box.y).toBeLessThan(0);
    expect(again.box.y + again.box.height).toBeGreaterThan(0);
    expectInside(picture);
    expectNoCollisions(picture);
  });

  it.each([undefined, "caution", "unchecked"] as const)(
    "is asked for by no finding of %s",
    (severity) => {
      expect(pictureWith(severity).texts.map(({ text }) => text)).not.toContain(AGAIN);
    },
  );
});

describe("a head that was not held to the front", () => {
  const scale = scaleFromReference(px([0, 0]), px([500, 0]), mm(50));
  const textsOf = (yaw: number, chin: number): readonly string[] => {
    const head = turnedHead(raisedHead(syntheticHead(), chin), yaw);
    const photo = requirePlannable(photograph(head, { factor: 0.1, tilt: 0, at: [1000, 900] }));
    const picture = pictureOf(drawPlan(planOnPhoto(photo, turnToFront(photo, scale))));
    expectInside(picture);
    expectNoCollisions(picture);
    return picture.texts.map(({ text }) => text).filter((text) => text.includes("° off"));
  };

  // Beyond 5° a portrait is not frontal: ISO/IEC 19794-5, from memory.
  it("says so in the picture from 5° on, by the greater of its angles", () => {
    expect(textsOf(3, 0)).toEqual([]);
    expect(textsOf(9, 0)).toEqual(["head about 9° off"]);
    const [lowered = ""] = textsOf(2, -20);
    expect(Number(/\d+/.exec(lowered)?.[0])).toBeGreaterThan(12);
  });

  it("says so where a check of the capture found it, whatever it is called for", () => {
    const findings: readonly PlanFinding[] = [
      { code: "head-turned", values: { size: 7, towards: "left", limit: 5 } },
    ];
    const svg = drawPlan(planBrows(syntheticFace(), {}, { findings }));
    expect(svg).toContain(">head about 7° off<");
  });
});
