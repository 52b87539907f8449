import { deepPoint, hasDepth } from "brow-geometry/units";
import {
  type Face,
  faceFrame,
  type FaceFrame,
  type Length,
  type Measured,
  measured,
  mm,
  planBrows,
  planOnPhoto,
  type Point,
  px,
  requirePlannable,
  type Scale,
  scaleFromIris,
  type SideMeasures,
  toFace,
  turnToFront,
} from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";
import { type Turning } from "brow-geometry/symmetry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { foundFace, type LondonFace, londonFaces } from "../../support/london-faces.js";
import { photograph } from "../../support/photograph.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { raisedHead, syntheticHead, turnedHead } from "../../support/synthetic-head.js";

const SCALE: Scale = { from: "px", to: "mm", factor: 0.2, u: 0, source: "given", notes: [] };
const POSE = { factor: 0.2, tilt: 3, at: [900, 700] } as const;

/** Landmarks that are known exactly, with a depth that was measured. */
const EXACT = {
  markup: "by-hand",
  uncertainty: { default: mm(0) },
  ringFactor: { value: 1, u: 0 },
  depth: "measured",
} as const;

/** What is read on the natural brows of a turned head whose turning alone is uncertain. */
function readTurned(
  turningIs: Partial<Turning>,
  yaw = 6,
): { readonly tail: Measured; readonly apart: Measured; readonly turning: Turning } {
  const photo = requirePlannable(
    photograph({ ...turnedHead(syntheticHead(), yaw), source: EXACT }, POSE),
  );
  const frame = turnToFront(photo, SCALE);
  if (frame.turning === undefined) throw new Error("not turned");
  const turning = { ...frame.turning, yawU: 0, depthU: 0, ...turningIs };
  const midline = { ...frame.midline, tiltU: 0, throughU: px(0) };
  const plan = planOnPhoto(photo, { ...frame, midline, turning, pitchU: 0 });
  const tail = plan.naturalMeasures.left.tailDistance;
  const apart = plan.naturalComparison.differences.find(
    ({ measure }) => measure === "tailDistance",
  )?.difference;
  if (tail === undefined || apart === undefined) throw new Error("no tail end");
  return { tail, apart, turning };
}

/** Depth of the synthetic head's tail end and of the mean of its symmetricPoints. */
function depthsOf(head: Face<"mm">): { readonly tail: number; readonly mean: number } {
  const depths: number[] = [];
  const { pairs, middle } = head.symmetricPoints ?? { pairs: [], middle: [] };
  for (const point of [...pairs.flatMap(({ right, left }) => [right, left]), ...middle]) {
    depths.push(depthOf(point));
  }
  const upper = head.left.brow?.upper ?? [];
  return {
    tail: depthOf(upper[upper.length - 1] ?? mm([0, 0])),
    mean: depths.reduce((sum, one) => sum + one, 0) / depths.length,
  };
}

function depthOf(point: Point<"mm">): number {
  return hasDepth(point) ? point[2] : Number.NaN;
}

describe("what is read on a turned head", () => {
  it("moves sideways by the yaw's error about the head's own centroid", () => {
    const { tail, mean } = depthsOf(syntheticHead());
    const { tail: read, apart } = readTurned({ yawU: 1 });
    const expected = (Math.abs(tail - mean) * Math.PI) / 180;
    // The pivot is what makes the difference: about the depth of the eyes it would be a third more.
    expect((Math.abs(tail) * Math.PI) / 180 / expected).toBeGreaterThan(1.3);
    expectClose(read.u, expected, 0.03 * expected);
    // One side comes closer to the midline as the other goes away from it.
    expectClose(apart.u, 2 * expected, 0.06 * expected);
  });

  it.each([-8, 3, 8])("moves as a wrong scale of depth moves it, turned by %s°", (yaw) => {
    const wrong = 0.05;
    const readScaled = (times: number): number => {
      const head = turnedHead(syntheticHead(), yaw);
      const scaled = mapFace(head, (point: Point<"mm">) =>
        deepPoint(point[0], point[1], times * depthOf(point)),
      );
      const { face } = turnToFront({ ...scaled, source: EXACT });
      const upper = face.left.brow?.upper ?? [];
      return upper[upper.length - 1]?.[0] ?? Number.NaN;
    };
    const moved = Math.abs(readScaled(1 + wrong) - readScaled(1 - wrong)) / 2;
    const { tail } = readDepthWrong(yaw, wrong);
    expectClose(tail.u, moved, 0.15 * moved + 0.003);
  });
});

describe("what is read on brows without depth before a camera 400 mm away", () => {
  const photo = requirePlannable(photograph({ ...syntheticFace(), source: EXACT }, POSE));
  const startHeight = (method: "mirror" | "given", away: Measured<Length<"mm">>): Measured => {
    const frame = faceFrame(photo, { ...SCALE, cameraDistance: away });
    const midline = { ...frame.midline, method, tiltU: 0, throughU: px(0) };
    const read = planOnPhoto(photo, { ...frame, midline, pitchU: 0 }).naturalMeasures.left
      .startHeight;
    if (read === undefined) throw new Error("no start");
    return read;
  };

  it.each(["mirror", "given"] as const)(
    "is unsure of how near the brows lie, 2 mm in 400 (midline: %s)",
    (method) => {
      const { value, u } = startHeight(method, measured(mm(400), mm(0)));
      expectClose(u, (value * 2) / 400, 0.05 * u);
    },
  );

  it.each(["mirror", "given"] as const)(
    "is unsure of how far the camera was (midline: %s)",
    (method) => {
      const { value, u } = startHeight(method, measured(mm(400), mm(40)));
      const nearer = 15 - 14.5 ** 3 / (0.987 * 87.8) ** 2;
      expectClose(u, value * Math.hypot(2 / 400, (nearer * 40) / 400 ** 2), 0.05 * u);
    },
  );
});

describe("what is read where nobody knows how far the chin was raised", () => {
  const exactFace = { ...syntheticFace(), source: EXACT };
  const readAt = (
    frame: (photo: Face<"px">) => FaceFrame,
    head: Face<"mm">,
  ): SideMeasures<Measured> => {
    const photo = requirePlannable(photograph(head, POSE));
    return planOnPhoto(photo, frame(photo)).naturalMeasures.left;
  };

  it("is as unsure in height as 5° make it for what lies ahead of the eyes, without depth", () => {
    const unturned = (photo: Face<"px">): FaceFrame => {
      const frame = faceFrame(photo, SCALE);
      return { ...frame, midline: { ...frame.midline, tiltU: 0, throughU: px(0) } };
    };
    const ahead = 15 - 14.5 ** 3 / (0.987 * 87.8) ** 2;
    const { startHeight, startDistance } = readAt(unturned, exactFace);
    expectClose(startHeight?.u, ahead * Math.sin((5 * Math.PI) / 180), 1e-3);
    expectClose(startDistance?.u, 0, 1e-9);
    const known = (photo: Face<"px">): FaceFrame => ({ ...unturned(photo), pitchU: 0 });
    expectClose(readAt(known, exactFace).startHeight?.u, 0, 1e-9);
  });

  it("is read the same whatever the pitch, with depth; or is unsure by what it moves, not turned", () => {
    const photo = foundFace(londonFaces()[0] as LondonFace, "mesh-478");
    const head = toFace(photo, turnToFront(photo, scaleFromIris(photo)));
    const raised = raisedHead(head, 20);
    const turned = (photo: Face<"px">): FaceFrame => turnToFront(photo, SCALE);
    const level = readAt(turned, head).startHeight;
    const taken = readAt(turned, raised).startHeight;
    expectClose(taken?.value, level?.value, 1e-6);
    expectClose(taken?.u, level?.u, 0.05 * (level?.u ?? 0));
    const left = readAt((photo) => faceFrame(photo, SCALE), raised).startHeight;
    const off = Math.abs((left?.value ?? 0) - (level?.value ?? 0));
    expect(off).toBeGreaterThan(4);
    expect(1.96 * (left?.u ?? 0)).toBeGreaterThan(off);
  });
});

describe("the outer eye corner to the tail end on a modelled skin", () => {
  it("is unsure of how deep the skin falls, by 12 %, and of how far the corner lies behind it, by 0.07", () => {
    const face = requirePlannable({ ...syntheticFace(), source: EXACT });
    const [corner, tail] = [face.left.exocanthion, face.left.brow.upper.at(-1) ?? mm([0, 0])];
    const width = 0.987 * (face.left.exocanthion[0] - face.right.exocanthion[0]);
    const apart = (deeper: number, setBack: number): number => {
      const fall = (tail[0] ** 3 - corner[0] ** 3) / width ** 2;
      const behind = deeper * fall - setBack * corner[0];
      return Math.hypot(tail[0] - corner[0], tail[1] - corner[1], behind);
    };
    const read = planBrows(face).naturalMeasures.left.exocanthionToTailEnd;
    expectClose(read?.value, apart(1, 0.212), 1e-9);
    const byDepth = (apart(1.12, 0.212) - apart(0.88, 0.212)) / 2;
    const bySetBack = (apart(1, 0.282) - apart(1, 0.142)) / 2;
    expectClose(read?.u, Math.hypot(byDepth, bySetBack), 1e-6);
  });
});

/** A head whose scale of depth alone is uncertain: its skin says so. */
function readDepthWrong(yaw: number, relativeU: number): { readonly tail: Measured } {
  const photo = requirePlannable(
    photograph(
      { ...turnedHead(syntheticHead(), yaw), source: { ...EXACT, depth: "estimated" } },
      POSE,
    ),
  );
  const frame = turnToFront(photo, SCALE);
  if (frame.turning === undefined) throw new Error("not turned");
  const turning = { ...frame.turning, yawU: 0 };
  const midline = { ...frame.midline, tiltU: 0, throughU: px(0) };
  const { tailDistance } = planOnPhoto(photo, { ...frame, midline, turning, pitchU: 0 })
    .naturalMeasures.left;
  if (tailDistance === undefined) throw new Error("no tail end");
  // A detector's depth is good to a tenth.
  return { tail: { value: tailDistance.value, u: (tailDistance.u * relativeU) / 0.1 } };
}
