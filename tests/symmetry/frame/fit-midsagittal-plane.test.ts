import { deepPoint, hasDepth } from "brow-geometry/units";
import { distance, distanceFromPlane } from "brow-geometry/geometry";
import { type Face, fitMidline, mm, type Point } from "brow-geometry";
import { fitMidsagittalPlane } from "brow-geometry/symmetry";
import { mapFace } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { foundFace, londonFaces } from "../../support/london-faces.js";
import {
  faceOfMesh,
  faceOfPoints68,
  meshSamples,
  points68Samples,
} from "../../support/sample-faces.js";
import { syntheticHead, turnedHead } from "../../support/synthetic-head.js";

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** The head turned to the client's left, then lowered, its depth scaled. */
function loweredHead(yaw: number, pitch: number, times: number): Face<"mm"> {
  const [cosine, sine] = [Math.cos((pitch * Math.PI) / 180), Math.sin((pitch * Math.PI) / 180)];
  return mapFace(turnedHead(syntheticHead(), yaw), (point: Point<"mm">) => {
    const [x, y, depth] = [point[0], point[1], hasDepth(point) ? point[2] : 0];
    return deepPoint(x, y * cosine + depth * sine, times * (depth * cosine - y * sine));
  });
}

/** Tilt of the pairs' common direction in the picture, in closed form. */
function tiltOfPairs(yaw: number, pitch: number): number {
  const [turn, lower] = [(yaw * Math.PI) / 180, (pitch * Math.PI) / 180];
  return degrees(Math.atan2(0 - Math.sin(turn) * Math.sin(lower), Math.cos(turn)));
}

function depthOf(point: Point<"px">): number {
  return hasDepth(point) ? point[2] : 0;
}

describe("the tilt of a mirror plane", () => {
  it.each([
    [8, 12],
    [-9, 15],
    [5, -10],
  ])("is that of all pairs on a head turned by %s° and lowered by %s°", (yaw, pitch) => {
    const { tilt, tiltU } = fitMidsagittalPlane(loweredHead(yaw, pitch, 1));
    expectClose(tilt, tiltOfPairs(yaw, pitch), 1e-9);
    // As sure as that of the head that looks straight ahead.
    expectClose(tiltU, fitMidsagittalPlane(syntheticHead()).tiltU, 0.02);
  });

  it.each([
    [8, 12, 0.7],
    [-9, 15, 0.7],
    [9, 15, 1.3],
  ])("turned by %s°, lowered by %s°, is less sure with %s times the depth", (yaw, pitch, times) => {
    const { tilt, tiltU } = fitMidsagittalPlane(loweredHead(yaw, pitch, times));
    const off = Math.abs(tilt - tiltOfPairs(yaw, pitch));
    expect(off).toBeGreaterThan(0.2);
    expectClose(
      tiltU,
      Math.hypot(off, fitMidsagittalPlane(loweredHead(yaw, 0, times)).tiltU),
      0.03,
    );
  });

  // The other detector reads no depth: the direction of its five pairs is a witness of its own.
  it("of real faces lies as far from another detector's pairs as it says", () => {
    const shares = meshSamples.map((sample, index) => {
      const other = points68Samples[index];
      if (other === undefined) throw new Error("no such face");
      const { right, left } = faceOfPoints68(other);
      let [x, y] = [0, 0];
      for (const name of ["endocanthion", "exocanthion", "pupil", "alare", "cheilion"] as const) {
        const [from, to] = [right[name], left[name]];
        if (from === undefined || to === undefined) continue;
        x += to[0] - from[0];
        y += to[1] - from[1];
      }
      const { tilt, tiltU } = fitMidsagittalPlane(faceOfMesh(sample));
      return (tilt + degrees(Math.atan2(y, x))) / tiltU;
    });
    const squares = shares.map((share) => share * share).sort((one, next) => one - next);
    // Half of normal errors lie within 0.674 of their standard deviation.
    const median = Math.sqrt(squares[10] ?? Number.NaN);
    expect(median).toBeGreaterThan(0.3);
    expect(median).toBeLessThan(1.6);
  });

  // Neither saw the other's points; the plane lies at the depth of the inner eye corners.
  it("and its place at brow height hold the midline drawn by hand as often as they say", () => {
    const faces = londonFaces();
    const held = { tilt: 0, place: 0 };
    for (const face of faces) {
      const { hand } = face;
      const mesh = foundFace(face, "mesh-478");
      const { line, tilt } = fitMidline(hand);
      const plane = fitMidsagittalPlane(mesh);
      if (Math.abs(plane.tilt - tilt) <= 1.96 * plane.tiltU) held.tilt += 1;
      const [one, other] = [mesh.right.endocanthion, mesh.left.endocanthion];
      const [right, left] = [hand.right.exocanthion, hand.left.exocanthion];
      if (one === undefined || other === undefined || right === undefined || left === undefined) {
        return expect.fail("no eye corners");
      }
      const depth = (depthOf(one) + depthOf(other)) / 2;
      const up = (20 * distance(right, left)) / 90;
      const brow = line.through.map((at, axis) => at + up * (line.direction[axis] ?? 0));
      const at = deepPoint<"px">(brow[0] ?? 0, brow[1] ?? 0, depth);
      const across = Math.hypot(plane.normal[0], plane.normal[1]);
      const lever = Math.hypot(at[0] - plane.through[0], at[1] - plane.through[1]);
      const u = Math.hypot(plane.throughU, (lever * plane.tiltU * Math.PI) / 180);
      if (Math.abs(distanceFromPlane(at, plane)) / across <= 1.96 * u) held.place += 1;
    }
    expect(held.tilt / faces.length).toBeGreaterThanOrEqual(0.93);
    expect(held.tilt / faces.length).toBeLessThanOrEqual(0.97);
    expect(held.place / faces.length).toBeGreaterThanOrEqual(0.93);
    expect(held.place / faces.length).toBeLessThanOrEqual(0.97);
  });

  it("leaves out the pairs that the plane leaves out", () => {
    const head = syntheticHead();
    const pairs = head.symmetricPoints?.pairs ?? [];
    const misplaced = pairs.map((pair, index) =>
      index % 9 === 0 ? { right: pair.right, left: mm([60, 70, 0]) } : pair,
    );
    const symmetricPoints = { pairs: misplaced, middle: head.symmetricPoints?.middle ?? [] };
    expect(fitMidsagittalPlane({ ...head, symmetricPoints }).tiltU).toBeLessThan(0.6);
  });
});
