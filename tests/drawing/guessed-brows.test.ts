import {
  drawPlan,
  faceFrame,
  mm,
  planBrows,
  planOnPhoto,
  type Point,
  requirePlannable,
  scaleFromReference,
} from "brow-geometry";
import { drawSheet } from "brow-geometry/drawing";
import { drawChoices, drawStrip } from "brow-geometry/drawing";
import { weighChoices, withoutHair } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { clippedTo, type Spot } from "../../src/drawing/canvas/box.js";
import { isHair } from "../../src/mapping/dots/is-hair.js";
import { faceOfPoints68, points68Samples } from "../support/sample-faces.js";
import { syntheticPlan } from "../support/synthetic-plan.js";
import { PICTURED_PLANS } from "./pictured-plans.js";
import { linesOf, pathSpots, pictureOf, withClass } from "./picture.js";

const GUESSED = PICTURED_PLANS.filter(([, { face }]) => !isHair(face, "left"));

describe.each(GUESSED)("pictures of a plan of guessed brows: %s", (_, plan) => {
  const { face } = plan;
  const choices = [{ start: "natural", arch: "natural", tail: "natural" }, {}] as const;
  const drawn: Readonly<Record<string, readonly string[]>> = {
    plan: [drawPlan(plan, { overlap: true })],
    sheet: [drawSheet(plan, { overlap: true })],
    strip: [drawStrip(plan)],
    choices: [drawChoices(face, weighChoices(face, choices))],
  };

  it.each(Object.entries(drawn))("of the kind %s say nothing of what grows", (_, pages) => {
    const written = pages.flatMap(linesOf);
    expect(
      written.filter((text) => /\bgrows?\b(?! so)|to be removed|to be filled/.test(text)),
    ).toEqual(
      // What rows of choices are ordered by is said of all faces.
      written.filter((text) => text.includes("from how the brows grow")),
    );
  });

  it("draw a guess as no hair is, and name it", () => {
    const picture = pictureOf(drawPlan(plan, { overlap: true }));
    expect(withClass(picture, "natural")).toHaveLength(0);
    expect(withClass(picture, "remove")).toHaveLength(0);
    // Twice in the face, once as a sample of the legend.
    expect(withClass(picture, "guess").length).toBe(2);
    const named = picture.texts.filter(({ text }) => text === "the detector’s guess");
    expect(named).toHaveLength(2);
    const legend = picture.texts.map(({ text }) => text).join(" ");
    expect(legend).toContain("instead of hair: the mesh's brow template");
  });
});

it.each(points68Samples)(
  "writes no name of a guess over a guide of 68 points: $photo, $face",
  (sample) => {
    const photo = faceOfPoints68(sample);
    // Invented: no ruler lies in these photos.
    const scale = scaleFromReference(
      photo.right.exocanthion as Point<"px">,
      photo.left.exocanthion as Point<"px">,
      mm(88),
    );
    const face = requirePlannable(photo);
    const picture = pictureOf(drawPlan(planOnPhoto(face, faceFrame(face, scale))));
    const guides = picture.elements
      .filter(({ attributes }) => /^guide /.test(attributes.class ?? ""))
      .flatMap(({ children }) => children.map(({ attributes }) => pathSpots(attributes.d ?? "")));
    expect(guides.length).toBeGreaterThan(5);
    const names = picture.texts.filter(({ text }) => text === "the detector’s guess");
    expect(names).toHaveLength(2);
    for (const { box } of names) {
      const covered = guides.filter((spots) =>
        spots.slice(1).some((to, index) => clippedTo(box, { from: spots[index] as Spot, to })),
      );
      expect(covered).toEqual([]);
    }
  },
);

it("draws hair as hair", () => {
  const picture = pictureOf(drawPlan(syntheticPlan));
  expect(withClass(picture, "natural").length).toBeGreaterThan(0);
  expect(withClass(picture, "guess")).toHaveLength(0);
});

it("draws a brow without hair as what stands in for it, and says that there is none", () => {
  const { face } = syntheticPlan;
  const plan = planBrows(withoutHair(face, "right"));
  const picture = pictureOf(drawPlan(plan, { overlap: true }));
  const texts = picture.texts.map(({ text }) => text);
  expect(texts).toContain("no hair");
  expect(texts.join(" ")).toContain("instead of hair: the other brow, mirrored");
  const classes = picture.elements.map(({ attributes }) => attributes.class);
  expect(classes).toContain("guess right");
  expect(classes).toContain("natural left");
  expect(classes).toContain("remove left");
  expect(classes).not.toContain("natural right");
  expect(classes).not.toContain("remove right");
  const strip = pictureOf(drawStrip(plan)).texts.map(({ text }) => text);
  expect(strip).toContain("client’s right, no hair");
  expect(strip).toContain("client’s left, as it grows");
});
