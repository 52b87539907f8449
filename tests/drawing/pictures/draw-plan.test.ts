import { test } from "@fast-check/vitest";
import {
  type BrowPlan,
  drawPlan,
  faceFrame,
  type FaceFrame,
  type FlatPoint,
  GeometryError,
  mm,
  type PlanDrawing,
  planBrows,
  planDots,
  type PlannableFace,
  px,
  requirePlannable,
  scaleFromReference,
  type Theme,
  toPhoto,
} from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clippedTo, isWithin, type Spot } from "../../../src/drawing/canvas/box.js";
import { anyFace, anyPose } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { allElements } from "../../support/parse-xml.js";
import { refusal } from "../../support/refusal.js";
import { photograph, type Pose } from "../../support/photograph.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";
import { PICTURED_PLANS, realPlan } from "../pictured-plans.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { pathSpots, type Picture, pictureOf, withClass } from "../picture.js";

describe.each(PICTURED_PLANS)("the picture of a plan: %s", (_, plan) => {
  const picture = pictureOf(drawPlan(plan));

  it("is a picture with a name and a description", () => {
    expect(picture.root.name).toBe("svg");
    expect(picture.root.attributes).toMatchObject({
      role: "img",
      xmlns: "http://www.w3.org/2000/svg",
    });
    expect(picture.root.children.slice(0, 2).map(({ name }) => name)).toEqual(["title", "desc"]);
    expect(picture.root.children[1]?.text).toContain("Right brow as planned");
  });

  it("stays inside its view box", () => {
    expectInside(picture);
  });

  it("lets no two texts touch", () => {
    expectNoCollisions(picture);
  });

  it("finds room for everything it wants to write", () => {
    expect(picture.root.children[1]?.text).not.toContain("Not written");
    const written = picture.texts.map(({ text }) => text);
    for (const side of ["right", "left"] as const) {
      const { front, tail } = plan.measures[side];
      for (const { value, u } of [front, tail].filter((reading) => reading !== undefined)) {
        const doubt = u < 0.05 ? "" : ` ± ${u.toFixed(1)}`;
        expect(written).toContain(`${value.toFixed(1)}${doubt} mm`);
      }
    }
    expect(written.filter((text) => text === "start")).toHaveLength(2);
    expect(written.filter((text) => text === "arch")).toHaveLength(2);
    expect(written.filter((text) => text === "tail")).toHaveLength(2);
  });

  it("writes nothing over a line that gives a length", () => {
    for (const { children } of withClass(picture, "length")) {
      for (const path of children.flatMap((group) => group.children)) {
        const [from, to] = pathSpots(path.attributes.d ?? "");
        if (from === undefined || to === undefined) throw new Error("a ruler's line has two ends");
        const over = picture.texts.filter(({ box }) => clippedTo(box, { from, to }) !== undefined);
        expect(over.map(({ text }) => text)).toEqual([]);
      }
    }
  });

  it("writes nothing over the eyes", () => {
    for (const spot of spotsAcrossEyes(plan)) {
      const over = picture.texts.filter(({ box }) => holds(box, spot)).map(({ text }) => text);
      expect(over).toEqual([]);
    }
  });

  it("draws no guide through an open eye", () => {
    const middles = spotsAcrossEyes(plan).filter((_spot, index) => index % 5 === 2);
    for (const guide of withClass(picture, "guide")) {
      for (const path of guide.children.flatMap(({ children }) => children)) {
        const spots = pathSpots(path.attributes.d ?? "");
        for (const [index, to] of spots.slice(1).entries()) {
          for (const middle of middles) {
            const away = distanceToStretch(middle, spots[index] as Spot, to);
            expect(away).toBeGreaterThan(sizeOf(plan));
          }
        }
      }
    }
  });
});

describe.each(["light", "dark", "monochrome", "transparent"] as const)(
  "the %s theme",
  (theme: Theme) => {
    const plan = syntheticPlan;
    const picture = pictureOf(drawPlan(plan, { theme }));

    it("gives brows, midline and guides dashes of their own", () => {
      const roles = ["planned", "natural", "midline", "start", "arch", "tail"];
      const dashes = roles.map((role) => {
        const group = withClass(picture, role)[0]?.children.at(-1);
        return group?.attributes["stroke-dasharray"] ?? "solid";
      });
      expect(new Set(dashes).size).toBe(roles.length);
    });

    it("tells the dots apart by the shape of their dots", () => {
      const shapes = (["upperStart", "upperArch", "tailEnd", "lowerBody"] as const).map((dot) => {
        const element = withClass(picture, "dot").find(
          ({ attributes }) => attributes["data-dot"] === dot,
        );
        return element?.name === "circle"
          ? "circle"
          : pathSpots(element?.attributes.d ?? "").length;
      });
      expect(shapes).toEqual([4, 3, 4, "circle"]);
    });
  },
);

describe("what a plan found in its own shape", () => {
  const plan = planBrows(syntheticFace(), {
    thickness: { start: mm(5), body: mm(8), arch: mm(8) },
  });
  const findings = plan.cautions.filter(({ at }) => at !== undefined);
  const picture = pictureOf(drawPlan(plan));

  it("is framed where it lies, beneath the dots, and named by its number", () => {
    const frames = withClass(picture, "finding");
    expect(findings.map(({ code }) => code)).toEqual(["thickens-outward", "thickens-outward"]);
    expect(frames).toHaveLength(2);
    for (const [index, { at: [x = NaN, y = NaN] = [] }] of findings.entries()) {
      const frame = frames[index];
      const parts = frame === undefined ? [] : allElements(frame);
      const spots = parts.flatMap(({ attributes }) => pathSpots(attributes.d ?? ""));
      const middle = [0, 1].map((axis) => {
        const along = spots.map((spot) => spot[axis] ?? NaN);
        return (Math.min(...along) + Math.max(...along)) / 2;
      });
      expectClose(middle, [x, -y], 1e-3);
      expect(frame?.children[0]?.text).toMatch(new RegExp(`^F${index + 1}: .*thicker towards its`));
      expect(picture.texts.map(({ text }) => text)).toContain(`F${index + 1}`);
    }
    const classes = picture.elements.map(({ attributes }) => attributes.class);
    expect(classes.lastIndexOf("finding")).toBeLessThan(classes.indexOf("dot"));
  });

  it("is said in the legend with what to change", () => {
    const written = picture.texts.map(({ text }) => text).join(" ");
    expect(written).toContain("The right brow grows 3.0 mm thicker towards its body");
  });

  it("leaves no frame where there is nothing to look at", () => {
    expect(withClass(pictureOf(drawPlan(syntheticPlan)), "finding")).toEqual([]);
  });
});

it("draws monochrome pictures in greys alone", () => {
  const { elements } = pictureOf(drawPlan(syntheticPlan, { theme: "monochrome" }));
  const colours = elements.flatMap(({ attributes }) =>
    [attributes.fill, attributes.stroke].filter((paint) => paint?.startsWith("#")),
  );
  expect(colours.length).toBeGreaterThan(0);
  for (const colour of colours) expect(colour).toMatch(/^#(..)\1\1$/);
});

it("refuses a theme or a view that there is not, by name", () => {
  const plan = syntheticPlan;
  expect(() => drawPlan(plan, { theme: "sepia" as Theme })).toThrow(
    'drawPlan: theme is "sepia"; needs one of light, dark, monochrome, transparent',
  );
  expect(() => drawPlan(plan, { view: "side" as "face" })).toThrow(
    'drawPlan: view is "side"; needs one of photo, face',
  );
});

describe("a picture over a photo", () => {
  const { plan, width, height } = realPlan(6, 2);
  const frame = plan.frame;
  if (frame === undefined) throw new Error("a plan on a photo has a frame");
  const photo = { width, height };

  it("takes the photo's coordinates", () => {
    const picture = pictureOf(drawPlan(plan, { photo }));
    expect(picture.viewBox).toEqual({ x: 0, y: 0, width, height });
    for (const side of ["right", "left"] as const) {
      const dot = withClass(picture, "dot").find(
        ({ attributes }) =>
          attributes["data-side"] === side && attributes["data-dot"] === "lowerBody",
      );
      const [x, y] = toPhoto(plan.dots[side].lowerBody, frame);
      expect(Number(dot?.attributes.cx)).toBeCloseTo(x, 2);
      expect(Number(dot?.attributes.cy)).toBeCloseTo(y, 2);
    }
  });

  it("shows the client's right at the left of the picture", () => {
    const picture = pictureOf(drawPlan(plan, { photo }));
    const xOf = (side: string): number => {
      const dot = withClass(picture, "dot").find(
        ({ name, attributes }) => name === "circle" && attributes["data-side"] === side,
      );
      return Number(dot?.attributes.cx);
    };
    expect(xOf("right")).toBeLessThan(xOf("left"));
    const heading = (text: string): number =>
      picture.texts.find((one) => one.text === text)?.box.x ?? NaN;
    expect(heading("client’s right")).toBeLessThan(heading("client’s left"));
  });

  it("is an overlay without the photo, or lies on it", () => {
    const overlay = pictureOf(drawPlan(plan, { photo }));
    expect(overlay.elements.some(({ name }) => name === "image" || name === "rect")).toBe(false);
    const href = "photos/a b.jpg?x=1&y=2";
    const beneath = pictureOf(drawPlan(plan, { photo: { ...photo, href } }));
    const image = beneath.elements.find(({ name }) => name === "image");
    expect(image?.attributes).toMatchObject({
      href,
      x: "0",
      y: "0",
      width: String(width),
      height: String(height),
    });
  });

  it.each([0.5, 0.13, 1.7])("lies as well over the photo made %d times as large", (times) => {
    const resized = { width: Math.round(times * width), height: Math.round(times * height) };
    expect(drawPlan(plan, { photo: { ...resized, href: "p.jpg" } })).toBe(
      drawPlan(plan, { photo: { ...photo, href: "p.jpg" } }),
    );
  });

  it("refuses a photo of another shape than its landmarks were read on", () => {
    const shapes = [
      { width: height, height: width },
      { width, height: height + 200 },
      { width: width / 2, height },
    ];
    for (const shape of shapes) {
      const { code, message } = refusal(() => drawPlan(plan, { photo: shape }));
      expect(code).toBe("inconsistent");
      expect(message).toContain(`photo is "${shape.width} × ${shape.height}"; needs the shape of`);
      expect(message).toContain(`${width} × ${height}`);
    }
  });

  it("shows the brows' surroundings of the photo on request", () => {
    const picture = pictureOf(drawPlan(plan, { photo: { ...photo, href: "p.jpg" }, view: "face" }));
    expect(picture.viewBox.width).toBeLessThan(width / 4);
    expect(withClass(picture, "legend")).toHaveLength(1);
    expectInside(picture);
    expectNoCollisions(picture);
  });

  it.each([
    ["an image of text", "data:image/png;base64,AAAA"],
    ["a page's own", "blob:https://example.org/1"],
    ["a file beside it", "face.jpg"],
    ["another server's", "HTTPS://example.org/face.jpg"],
  ])("accepts the address of %s picture", (_, href) => {
    expect(drawPlan(plan, { photo: { ...photo, href } })).toContain("<image");
  });

  it.each(["javascript:alert(1)", " javascript:alert(1)", "data:text/html,hello", "vbscript:x"])(
    "refuses %s as an address",
    (href) => {
      expect(() => drawPlan(plan, { photo: { ...photo, href } })).toThrow(/photo\.href/);
    },
  );

  it("refuses a photo without a size, and one that the plan was not made on", () => {
    expect(() => drawPlan(plan, { photo: { width: 0, height } })).toThrow(GeometryError);
    expect(() => drawPlan(plan, { photo: { width, height: Number.NaN } })).toThrow(/photo\.height/);
    expect(() => drawPlan(syntheticPlan, { photo })).toThrow(/made on a photo/);
  });
});

describe("a planned brow", () => {
  const plan = syntheticPlan;
  const pathOf = (source: string): string =>
    withClass(pictureOf(source), "planned")[0]?.children.at(-1)?.children[0]?.attributes.d ?? "";

  it("is drawn as its outline, through its dots", () => {
    const spots = pathSpots(pathOf(drawPlan(plan)));
    for (const dot of ["upperStart", "upperArch", "tailEnd", "lowerStart", "lowerBody"] as const) {
      const [x, y] = plan.dots.right[dot];
      expect(spots.some((spot) => Math.hypot(spot[0] - x, spot[1] + y) < 2e-3)).toBe(true);
    }
  });

  it("takes the shape that is asked for, and no impossible one", () => {
    const shape = { frontRoundness: 0.5 };
    const round = { ...plan, choices: { ...plan.choices, shape } };
    expect(pathOf(drawPlan(round))).not.toBe(pathOf(drawPlan(plan)));
    const impossible = { ...plan, choices: { ...plan.choices, shape: { frontRoundness: 2 } } };
    expect(() => drawPlan(impossible)).toThrow(GeometryError);
  });

  it("runs through a body that an artist has pinned", () => {
    const { upperBody: free } = plan.dots.left;
    const at = mm([free[0] + 1, free[1] - 1]);
    const pinned = planBrows(syntheticFace(), { pins: [{ side: "left", dot: "upperBody", at }] });
    const source = drawPlan(pinned);
    const [x, y] = at.map((part) => Number(part.toFixed(3))) as [number, number];
    expect(pathOf(source)).not.toBe(pathOf(drawPlan(plan)));
    expect(source).toContain(` ${x} ${-y}C`);
  });
});

describe("text in a picture", () => {
  const plan = syntheticPlan;

  test.prop([fc.string({ unit: "binary", maxLength: 60 })], { numRuns: 40 })(
    "never becomes markup",
    (title) => {
      const picture = pictureOf(drawPlan(plan, { title }));
      const plain = pictureOf(drawPlan(plan));
      expect(picture.elements.map(({ name }) => name)).toEqual(
        plain.elements.map(({ name }) => name),
      );
    },
  );

  it("comes back as it was given", () => {
    const title = `</title><script>alert("1")</script> & 'Ana' 眉`;
    expect(pictureOf(drawPlan(plan, { title })).root.children[0]?.text).toBe(title);
  });
});

describe("any face in any pose", () => {
  const readings = syntheticPlan;
  // What is read on a plan and how sure it is takes long to find out, and changes no more than figures.
  const plannedIn = (face: PlannableFace, pose: Pose): BrowPlan | undefined =>
    attempt(() => ({ ...readings, ...planDots(face), frame: frameIn(pose) }));
  const anyPlan = fc.tuple(anyFace(1.5), anyPose()).map(([face, pose]) => plannedIn(face, pose));
  const anyOptions: fc.Arbitrary<PlanDrawing> = fc.record({
    theme: fc.constantFrom<Theme>("light", "dark", "monochrome", "transparent"),
    legend: fc.boolean(),
  });

  test.prop([anyPlan, anyOptions], { numRuns: 40 })(
    "is drawn inside the view box, without collisions, the same every time",
    (plan, options) => {
      fc.pre(plan !== undefined);
      const source = drawPlan(plan, options);
      const picture = pictureOf(source);
      expectInside(picture);
      expectNoCollisions(picture);
      expect(drawPlan(plan, options)).toBe(source);
    },
  );

  const sharesOfWidth = (plan: BrowPlan): readonly number[] => {
    const { texts, viewBox } = pictureOf(drawPlan(plan));
    return texts.map(({ size }) => size / viewBox.width);
  };
  const usual = sharesOfWidth(readings);

  test.prop([fc.double({ min: 0.02, max: 2, noNaN: true })], { numRuns: 20 })(
    "has letters in proportion, whatever the photo's resolution",
    (factor) => {
      const frame = frameIn({ factor, tilt: 0, at: [0, 0] });
      expectClose(sharesOfWidth({ ...readings, frame }), usual, 1e-4);
    },
  );

  test.prop([fc.double({ min: 0.5, max: 2, noNaN: true })], { numRuns: 20 })(
    "has letters in proportion, even where millimetres are wrong",
    (error) => {
      const face = mapFace(syntheticFace(), ([x, y]) => mm([error * x, error * y]));
      const plan = planDots(requirePlannable(face), { lead: "left", thickness: THIN });
      const wrong = { ...readings, ...plan };
      expect(Math.min(...sharesOfWidth(wrong))).toBeGreaterThan(0.95 * Math.min(...usual));
    },
  );

  it("has letters that can be read at a width of 600 px", () => {
    // 11 px is about the least that is read without effort (from memory).
    for (const share of usual) expect(600 * share).toBeGreaterThan(11);
  });
});

const THIN = { start: mm(3), body: mm(2), arch: mm(2) };

function frameIn(pose: Pose): FaceFrame {
  const scale = scaleFromReference(px([0, 0]), px([1000, 0]), mm(1000 * pose.factor));
  return faceFrame(photograph(syntheticFace(), pose), scale);
}

/** A plan, or nothing where a random face has none. */
function attempt(make: () => BrowPlan): BrowPlan | undefined {
  try {
    return make();
  } catch (error) {
    if (error instanceof GeometryError) return undefined;
    throw error;
  }
}

/** Five spots from corner to corner of each eye, as the picture shows them. */
function spotsAcrossEyes({ face, frame }: BrowPlan): readonly Spot[] {
  return (["right", "left"] as const).flatMap((side) => {
    const { endocanthion, exocanthion } = face[side];
    return [0.1, 0.3, 0.5, 0.7, 0.9].map((share): Spot => {
      const at: FlatPoint<"mm"> = mm([
        endocanthion[0] + share * (exocanthion[0] - endocanthion[0]),
        endocanthion[1] + share * (exocanthion[1] - endocanthion[1]),
      ]);
      if (frame === undefined) return [at[0], -at[1]];
      const [x, y] = toPhoto(at, frame);
      return [x, y];
    });
  });
}

function sizeOf({ frame }: BrowPlan): number {
  return frame === undefined ? 1 : 1 / frame.scale.factor;
}

function holds(box: Picture["viewBox"], [x, y]: Spot): boolean {
  return isWithin({ x, y, width: 0, height: 0 }, box);
}

function distanceToStretch([x, y]: Spot, from: Spot, to: Spot): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((x - from[0]) * dx + (y - from[1]) * dy) / square;
  const inside = Math.max(0, Math.min(1, share));
  return Math.hypot(x - from[0] - inside * dx, y - from[1] - inside * dy);
}
