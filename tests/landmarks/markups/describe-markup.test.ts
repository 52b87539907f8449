import {
  type CaptureCheck,
  checkCapture,
  type Face,
  fromMarkup,
  type MarkupName,
  measured,
  mm,
  say,
  type Scale,
} from "brow-geometry";
import { describeMarkup } from "brow-geometry/landmarks";
import { MARKUP_NAMES } from "../../../src/landmarks/internal.js";
import { LANDMARKS } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { points98OfMesh } from "../../support/points98-of-mesh.js";
import { refusal } from "../../support/refusal.js";
import {
  AS_FOUND,
  faceOfMesh,
  faceOfPoints68,
  frontalMesh,
  frontalPoints68,
} from "../../support/sample-faces.js";

const faces: Readonly<Record<MarkupName, Face<"px">>> = {
  "mesh-478": faceOfMesh(frontalMesh, AS_FOUND),
  "mesh-468": fromMarkup("mesh-468", frontalMesh.landmarks.slice(0, 468), {
    coordinates: "normalised",
    ...AS_FOUND,
    image: frontalMesh.image,
  }),
  "points-68": faceOfPoints68(frontalPoints68, AS_FOUND),
  "points-98": fromMarkup("points-98", points98OfMesh(frontalMesh), { coordinates: "pixels" }),
  "coco-wholebody-face": fromMarkup(
    "coco-wholebody-face",
    frontalPoints68.landmarks.flatMap(([x = 0, y = 0]) => [x, y, 2]),
    { coordinates: "pixels" },
  ),
};

describe("the description of a markup", () => {
  it.each(MARKUP_NAMES)("lists exactly what a face read from %s holds", (name) => {
    const { right, midline, ...face } = faces[name];
    const { landmarks, standIns, uncertainty } = describeMarkup(name);
    const held = new Set<string>([...Object.keys(right), ...Object.keys(midline)]);
    expect(new Set<string>(landmarks)).toEqual(held);
    expect(standIns).toEqual(face.standIns);
    expect(face.source?.uncertainty).toMatchObject(uncertainty);
  });

  it("counts every landmark as given or as missing", () => {
    for (const name of MARKUP_NAMES) {
      const { landmarks, missing } = describeMarkup(name);
      const { side, lines, midline } = LANDMARKS;
      const all = Object.keys({ ...side, ...lines, ...midline });
      expect([...landmarks, ...missing].sort()).toEqual(all.sort());
    }
  });

  it("says what cannot be computed, and for want of what", () => {
    const beyond = (name: (typeof MARKUP_NAMES)[number]): readonly string[] =>
      describeMarkup(name).beyond.map((one) => say(one));
    expect(describeMarkup("mesh-478").beyond).toEqual([
      { code: "beyond-true-skin", values: { lacks: ["measuredDepth"] } },
      { code: "beyond-stand-ins", values: { lacks: ["alare", "subnasale", "menton", "brow"] } },
    ]);
    expect(beyond("mesh-478")).toContain(
      "skin as it is, and not as it is modelled (no measured depth)",
    );
    expect(beyond("mesh-468")).toContain(
      "arch on the line from the nose wing through the pupil (no pupil)",
    );
    const thickness =
      "thickness, area and lower dots of the natural brow (no lower border of the brow)";
    expect(beyond("points-68")).toContain(thickness);
    expect(beyond("points-98")).not.toContain(thickness);
    expect(beyond("points-98")).toContain(
      "skin fitted to the face, and turning a head to the front (no depth)",
    );
  });

  /** What is said to be beyond a markup where a check of its faces cannot look. */
  const said: { readonly [Check in CaptureCheck]?: string } = {
    gazeAcross: "beyond-gaze",
    gazeUp: "beyond-gaze",
    pupilDistance: "beyond-pupil-distance",
    irisDifference: "beyond-iris-width",
    irisesAcross: "beyond-iris-width",
    irisWidth: "beyond-iris-width",
    pitch: "beyond-pitch",
  };

  it.each(MARKUP_NAMES)("says of %s what a check of its faces cannot look at", (name) => {
    const face = faces[name];
    const scale: Scale = {
      from: "px",
      to: "mm",
      factor: 0.6,
      u: 0.01,
      source: "given",
      notes: [],
    };
    const unchecked = checkCapture(face, {
      purpose: "map",
      scale,
      baseline: face,
      cameraDistance: measured(mm(2000), mm(50)),
      declared: { upright: true, relaxed: true },
    })
      .filter(({ severity }) => severity === "unchecked")
      .map(({ check }) => said[check] ?? `nothing of ${check}`);
    const possible = new Set(Object.values(said));
    const beyond = describeMarkup(name).beyond.filter(({ code }) => possible.has(code));
    expect(new Set(beyond.map(({ code }) => code))).toEqual(new Set(unchecked));
  });

  it("is refused for an unknown name", () => {
    expect(refusal(() => describeMarkup("points-5" as never)).message).toContain(
      'name is "points-5"; needs one of mesh-478, mesh-468',
    );
  });
});
