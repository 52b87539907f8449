import {
  type Choices,
  FACE_MIDLINE,
  faceFrame,
  fitMidline,
  lengthBetween,
  mm,
  otherSide,
  type Pin,
  planDots,
  type PlannableFace,
  planOnPhoto,
  px,
  requirePlannable,
  say,
  scaleFromReference,
  type Side,
} from "brow-geometry";
import { reflectAcross } from "brow-geometry/geometry";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { photograph } from "../../support/photograph.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";

/** The synthetic face, its nose (46 mm from sellion to subnasale) bent by so many degrees. */
function bentFace(degrees: number): PlannableFace {
  const face = syntheticFace();
  const subnasale = mm([46 * Math.tan((degrees * Math.PI) / 180), -44]);
  return { ...face, midline: { ...face.midline, subnasale } };
}

const startOf = (face: PlannableFace, choices: Choices = {}) => {
  const { reasons, choices: settled } = planDots(face, choices);
  return { start: settled.start, reason: reasons.find(({ code }) => code.startsWith("start-")) };
};

describe("a nose that is measured as bent", () => {
  // 2.92° is what 160 raters recognise (J Oral Maxillofac Surg 2015;73:1606–1614); two dots of
  // 0.26 mm (in a face 90 mm wide; this one has 87.8) over 46 mm leave 0.45°: proof needs 3.66°.
  it.each([
    [0, "alare-vertical"],
    [3.6, "alare-vertical"],
    [3.75, "endocanthion-vertical"],
    [-3.6, "alare-vertical"],
    [-3.75, "endocanthion-vertical"],
  ])("by %d° starts the brows at %s", (degrees, start) => {
    expect(startOf(bentFace(degrees)).start).toBe(start);
  });

  it("is named with angle, uncertainty and limit", () => {
    const { reason } = startOf(bentFace(-5));
    expect(reason?.code).toBe("start-at-endocanthion-nose-deviates");
    expect(reason && say(reason)).toContain(
      "the nose runs 5.0° off the midline (standard uncertainty 0.4°)",
    );
    expect(reason && say(reason)).toContain("more than the 2.92° that others notice");
  });

  it("gives way to what the artist sees or chooses", () => {
    expect(startOf(bentFace(8), { noseBent: false }).start).toBe("alare-vertical");
    expect(startOf(bentFace(8), { start: "alare-vertical" }).reason?.code).toBe("start-chosen");
    expect(startOf(bentFace(8), { noseBent: true }).reason?.code).toBe(
      "start-at-endocanthion-nose-bent",
    );
  });

  it("is not looked for where its ends are not known", () => {
    const { sellion, ...midline } = bentFace(8).midline;
    expect(sellion).toBeDefined();
    expect(startOf({ ...bentFace(8), midline }).start).toBe("alare-vertical");
  });

  it("on a photo has the midline's uncertainty too", () => {
    const photo = photograph(bentFace(4), { factor: 0.2, tilt: 0, at: [900, 700] });
    const scale = scaleFromReference(px([0, 0]), px([250, 0]), mm(50));
    const given = fitMidline(photo, { given: [px([900, 500]), px([900, 1000])] });
    const start = (tiltU: number) =>
      planOnPhoto(
        requirePlannable(photo),
        faceFrame(photo, scale, { midline: { ...given, tiltU } }),
      ).choices.start;
    expect([start(0.1), start(2)]).toEqual(["endocanthion-vertical", "alare-vertical"]);
  });
});

describe("a dot that an artist fixed", () => {
  it.each<[Pin["dot"], RegExp]>([
    ["upperStart", /^Start (above|on)/],
    ["upperArch", /^(Arch|Where) /],
    ["tailEnd", /^Tail end on/],
  ])("has the reason of the pin alone: %s", (dot, guide) => {
    const texts = (pins: readonly Pin[]) =>
      planDots(syntheticFace(), { pins }).reasons.map((reason) => say(reason));
    const [x, y] = planDots(syntheticFace()).dots.left[dot];
    const pin: Pin = { side: "left", dot, at: mm([x + 0.5, y - 0.5]) };
    expect(texts([]).filter((text) => guide.test(text))).not.toEqual([]);
    expect(texts([pin]).filter((text) => guide.test(text))).toEqual([]);
    expect(texts([pin]).filter((text) => text.includes("stays where"))).toHaveLength(1);
  });
});

describe("a brow carried by measure", () => {
  const byMeasure = (lead: Side): Choices => ({ lead, carry: "measure", keepHair: mm(0) });

  it("is the mirror image on a symmetric face", () => {
    const { dots } = planDots(syntheticFace(), byMeasure("left"));
    for (const dot of ["upperStart", "upperArch", "tailEnd", "lowerBody"] as const) {
      expectClose(dots.right[dot], reflectAcross(dots.left[dot], FACE_MIDLINE), 1e-6);
    }
  });

  it("keeps its own start and takes the leading heights and ruler lengths", () => {
    fc.assert(
      fc.property(anyFace(1), fc.constantFrom<Side>("right", "left"), (face, lead) => {
        const arch = "exocanthion-vertical";
        const { dots, skin, guides, origins } = planDots(face, { ...byMeasure(lead), arch });
        const side = otherSide(lead);
        const [startGuide] = guides[side];
        expect(dots[side].upperStart[0]).toBeCloseTo(startGuide?.line.through[0] ?? NaN, 6);
        const front = (of: Side) => lengthBetween(dots[of].upperStart, dots[of].upperArch, skin);
        const tail = (of: Side) => lengthBetween(dots[of].upperArch, dots[of].tailEnd, skin);
        expect(front(side)).toBeCloseTo(front(lead), 6);
        expect(tail(side)).toBeCloseTo(tail(lead), 6);
        for (const dot of ["upperStart", "upperArch", "tailEnd"] as const) {
          expect(dots[side][dot][1]).toBeCloseTo(dots[lead][dot][1], 9);
        }
        expect(origins[side].upperStart.from).toBe("own");
        expect(origins[side].tailEnd.from).toBe("measured");
        expect(origins[lead].tailEnd.from).toBe("own");
      }),
      { numRuns: 20 },
    );
  });

  it("says how far from the mirror image it lies, and keeps pins", () => {
    const face = syntheticFace();
    const shifted = { ...face, right: { ...face.right, alare: mm([-17.2, -38]) } };
    const { dots, reasons } = planDots(shifted, byMeasure("left"));
    // 1.5 mm more at the start is about as much farther out; skin that falls back takes some of it.
    const apart = -dots.right.tailEnd[0] - dots.left.tailEnd[0];
    expect(apart).toBeGreaterThan(0.8);
    expect(apart).toBeLessThan(1.5);
    const said = reasons.find(({ code }) => code === "carried-by-measure");
    expect(said?.values).toMatchObject({ side: "right", tail: apart });
    const pin: Pin = { side: "right", dot: "upperArch", at: mm([-40, 27]) };
    const pinned = planDots(shifted, { ...byMeasure("left"), pins: [pin] });
    const codes = pinned.reasons.map(({ code }) => code);
    expect(codes).toContain("lead-side-by-measure");
    expect(codes).not.toContain("pins-break-distances");
    expectClose(pinned.dots.right.upperArch, [-40, 27], 0);
    expect(pinned.origins.right.upperArch.from).toBe("pinned");
  });

  it("needs a brow that leads", () => {
    const plan = () => planDots(syntheticFace(), { carry: "measure" });
    expect(refusal(plan).message).toContain("planDots: lead is missing; needs right or left");
  });
});
