import {
  type BrowPlan,
  drawPlan,
  type Face,
  type FaceFrame,
  faceFrame,
  GeometryError,
  planOnPhoto,
  requirePlannable,
  type Scale,
  scaleFromIris,
  turnToFront,
} from "brow-geometry";
import type { Screen } from "brow-geometry/drawing";
import { describe, expect, it } from "vitest";
import { isWithin, type Spot, type Stretch } from "../../src/drawing/canvas/box.js";
import { stretches } from "../../src/drawing/canvas/brush.js";
import { planView } from "../../src/drawing/canvas/view.js";
import { eyeRoom, roomOutline } from "../../src/drawing/layers/eye-room.js";
import { SIDES } from "../../src/units/internal.js";
import { foundFace, londonFaces } from "../support/london-faces.js";
import { faceOfMesh, meshSamples } from "../support/sample-faces.js";
import { expectInside, expectNoCollisions } from "./expect-tidy.js";
import { pathSpots, type Picture, pictureOf, withClass } from "./picture.js";

/** Real faces by hand, from detectors, as they are and turned to front, each with its plan. */
const PLANS: readonly (readonly [name: string, plan: BrowPlan])[] = [
  ...londonFaces().flatMap((face, index) => {
    if (index % 6 > 0) return [];
    const { millimetres: factor } = face;
    const scale: Scale = { from: "px", to: "mm", factor, u: 0, source: "given", notes: [] };
    const upright = (photo: Face<"px">): FaceFrame => faceFrame(photo, scale);
    return [
      planned(`${index} by hand`, face.hand, upright),
      planned(`${index} by mesh`, foundFace(face, "mesh-478"), turned),
      planned(`${index} by 68 points`, foundFace(face, "points-68"), upright),
    ];
  }),
  ...meshSamples.flatMap((sample) => {
    const photo = faceOfMesh(sample);
    const name = `${sample.face} of sample ${sample.photo}`;
    const asTaken = planned(name, photo, (face) => faceFrame(face, scaleFromIris(face)));
    try {
      return [asTaken, planned(`${name}, turned`, photo, turned)];
    } catch (error) {
      if (error instanceof GeometryError && error.detail.field === "yaw") return [asTaken];
      throw error;
    }
  }),
];

function turned(photo: Face<"px">): FaceFrame {
  return turnToFront(photo, scaleFromIris(photo));
}

function planned(
  name: string,
  photo: Face<"px">,
  frameOf: (photo: Face<"px">) => FaceFrame,
): readonly [string, BrowPlan] {
  const face = requirePlannable(photo);
  return [name, planOnPhoto(face, frameOf(face))];
}

const SCREENS: readonly (readonly [where: string, screen?: Screen, legend?: false])[] = [
  ["as it is"],
  ["on a phone", { width: 375 }],
  ["on a phone, in large type", { width: 375, leastType: 14 }],
  ["on a wide screen", { width: 1440 }],
  ["on a phone, without a legend", { width: 375 }, false],
];

const DRAWN = PLANS.flatMap(([name, plan]) =>
  SCREENS.map(([where, screen, legend]) => {
    const options = {
      ...(screen === undefined ? {} : { screen }),
      ...(legend === undefined ? {} : { legend }),
    };
    const picture = pictureOf(drawPlan(plan, { view: "face", ...options }));
    return { name, plan, where, screen, legend, picture };
  }),
);

describe.each(DRAWN)("the picture of a real face, $where: $name", (drawn) => {
  const { plan, screen, legend, picture } = drawn;

  it("leads no label over an eye, or near its corners", () => {
    expectClearEyes(picture, plan);
  });

  it("lets no two texts touch, and leads no label through another", () => {
    expectInside(picture);
    expectNoCollisions(picture);
    for (const leader of leadersOf(picture)) {
      // A leader ends at the edge of its own text.
      const spots = spotsAlong(leader).slice(0, -1);
      const through = picture.texts.filter(({ box }) =>
        spots.some(([x, y]) => isWithin({ x, y, width: 0, height: 0 }, box)),
      );
      expect(through.map(({ text }) => text)).toEqual([]);
    }
  });

  it("has letters as large as they are asked for", () => {
    const { width = 600, leastType = 8 } = screen ?? {};
    const pixels = picture.texts.map(({ size }) => (size * width) / picture.viewBox.width);
    expect(Math.min(...pixels)).toBeGreaterThan(
      (screen ? (screen.leastType ?? 11) : leastType) - 0.01,
    );
  });

  it("says every length, beneath it where there is no room", () => {
    const lengths = SIDES.flatMap((side) => {
      const { front, tail } = plan.measures[side];
      return [front, tail].flatMap((reading) => (reading === undefined ? [] : [reading.value]));
    });
    const written = picture.texts.map(({ text }) => text);
    for (const value of lengths) {
      const said = written.filter((text) => text.startsWith(`${value.toFixed(1)} ± `));
      const same = lengths.filter((other) => other.toFixed(1) === value.toFixed(1));
      expect(said).toHaveLength(same.length);
    }
    // A key stands where the length is, and beneath.
    const keys = written.filter((text) => /^L\d$/.test(text));
    for (const key of keys) expect(keys.filter((other) => other === key)).toHaveLength(2);
    expect(keys.length / 2).toBeLessThanOrEqual(
      screen === undefined || legend === false ? 0 : lengths.length,
    );
  });

  it("leaves out names alone that its legend has, and nothing where letters are small", () => {
    const [, left = ""] = /Not written in the picture: (.*?)\. /.exec(descriptionOf(picture)) ?? [];
    const names = left.split("; ").filter((name) => name !== "");
    if (screen?.width !== 375) expect(names).toEqual([]);
    expect(names.filter((name) => !NAMES.includes(name))).toEqual([]);
  });
});

/** Names that the legend explains by their strokes. */
const NAMES = ["start", "arch", "tail", "the detector’s guess"];

function descriptionOf({ root }: Picture): string {
  return root.children[1]?.text ?? "";
}

function expectClearEyes(picture: Picture, { face, ...plan }: BrowPlan): void {
  const view = planView({ face, ...plan });
  for (const leader of leadersOf(picture)) {
    for (const side of SIDES) {
      const room = roomOutline(eyeRoom(face[side])).map(view.place);
      const edge = stretches([...room, room[0] as Spot]);
      expect(edge.some((line) => cross(leader, line))).toBe(false);
      for (const corner of [face[side].endocanthion, face[side].exocanthion]) {
        const [x, y] = view.place(corner);
        const away = spotsAlong(leader).map((spot) => Math.hypot(spot[0] - x, spot[1] - y));
        expect(Math.min(...away)).toBeGreaterThan(view.size);
      }
    }
  }
}

function leadersOf(picture: Picture): readonly Stretch[] {
  return withClass(picture, "leader").map((leader) => {
    const [from, to] = pathSpots(leader.children[0]?.children[0]?.attributes.d ?? "");
    if (from === undefined || to === undefined) throw new Error("a leader has two ends");
    return { from, to };
  });
}

function spotsAlong({ from, to }: Stretch): readonly Spot[] {
  return Array.from({ length: 101 }, (_, index): Spot => {
    const share = index / 100;
    return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
  });
}

function cross(one: Stretch, other: Stretch): boolean {
  const turn = ({ from, to }: Stretch, [x, y]: Spot): number =>
    (to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]);
  return (
    turn(one, other.from) * turn(one, other.to) < 0 &&
    turn(other, one.from) * turn(other, one.to) < 0
  );
}
