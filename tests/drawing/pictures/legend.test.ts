import { checkDrawn, drawPlan, mm, type Pin, planBrows } from "brow-geometry";
import { drawSheet } from "brow-geometry/drawing";
import { describe, expect, it } from "vitest";
import { allElements, parseXml, type XmlElement } from "../../support/parse-xml.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";
import { pictureOf, type Picture, withClass } from "../picture.js";

const { upperArch } = syntheticPlan.dots.left;
const drawn = { right: {}, left: { upperArch: [upperArch[0], upperArch[1] + 4] as never } };
const check = checkDrawn(syntheticPlan, { dots: drawn });

/** The samples of a legend in their order, each with what it is a sample of. */
function samples({ elements }: Picture): ReadonlyMap<string, readonly XmlElement[]> {
  const legend = elements.find(({ attributes }) => attributes.class === "legend");
  const found = new Map<string, XmlElement[]>();
  let waiting: XmlElement[] = [];
  for (const child of legend?.children ?? []) {
    if (child.name !== "text") waiting.push(child);
    else if (waiting.length > 0) {
      found.set(child.text, waiting);
      waiting = [];
    }
  }
  return found;
}

function pathsOf(picture: Picture, begins: string): readonly string[] {
  const [, elements = []] = [...samples(picture)].find(([text]) => text.startsWith(begins)) ?? [];
  return elements.flatMap(allElements).flatMap(({ attributes: { d } }) => d ?? []);
}

describe("the legend of a plan", () => {
  const picture = pictureOf(drawPlan(syntheticPlan, { check }));

  it("explains the dots once, upper and lower ones beside each other", () => {
    const about = [...samples(picture)].filter(([text]) => text.startsWith("dots"));
    expect(about).toHaveLength(1);
    const marks = about
      .flatMap(([, elements]) => elements.flatMap(allElements))
      .filter(({ name }) => name === "path");
    expect(new Set(marks.map(({ attributes }) => attributes.fill)).size).toBe(2);
  });

  it("shows a ruler with the ends that it has in the picture, and arrows with their heads", () => {
    expect(pathsOf(picture, "front and tail")).toHaveLength(3);
    expect(pathsOf(picture, "from where it was drawn")).toHaveLength(2);
    const pins: readonly Pin[] = [{ side: "left", dot: "upperArch", at: mm([40, 30]) }];
    const sheet = drawSheet(planBrows(syntheticFace(), { lead: "left", pins }));
    const move = allElements(parseXml(sheet)).find(
      ({ name, children }) => name === "li" && children[1]?.text.startsWith("move, numbered"),
    );
    const drawnIn = allElements(move ?? parseXml(sheet)).filter(({ name }) => name === "path");
    expect(drawnIn).toHaveLength(2);
  });

  it("names in the picture what is named there, and not again", () => {
    const texts = picture.texts.map(({ text }) => text);
    expect(texts.filter((text) => text === "midline")).toHaveLength(1);
  });

  it("tells corrections from moves and rulers without colour", () => {
    const dashOf = (role: string): string | undefined =>
      allElements(withClass(picture, role)[0] ?? picture.root)
        .map(({ attributes }) => attributes["stroke-dasharray"])
        .find((dash) => dash !== undefined);
    expect(dashOf("correction")).toBeDefined();
    expect(dashOf("length")).toBeUndefined();
  });
});
