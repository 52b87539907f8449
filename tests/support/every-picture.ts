import { readFileSync } from "node:fs";
import {
  type BrowPlan,
  checkDrawn,
  type DrawnCheck,
  drawPlan,
  fromMarkup,
  measured,
  mm,
  type Pin,
  planBrows,
  type PlannableFace,
  planOnPhoto,
  requirePlannable,
  scaleFromIris,
  turnToFront,
} from "brow-geometry";
import { drawPractice, drawSheet } from "brow-geometry/drawing";
import {
  drawAreas,
  drawCaptures,
  drawCarried,
  drawChoices,
  drawResult,
  drawDimensions,
  drawStrip,
  drawVariants,
  type Screen,
  type Theme,
} from "brow-geometry/drawing";
import { carryInto, type SkinArea, type WeighedChoices, weighChoices } from "brow-geometry/mapping";
import { type LandmarkFile, parseLandmarkFile } from "brow-geometry/schema";
import { pointOnSide } from "brow-geometry/symmetry";
import type { Words } from "brow-geometry/words";
import { parseXml, type XmlElement } from "./parse-xml.js";
import { syntheticFace } from "./synthetic-face.js";

export const face: PlannableFace = syntheticFace();
const pins: readonly Pin[] = [
  { side: "left", dot: "upperArch", at: mm([40, 27]), by: "1", reason: "2" },
];
export const plan: BrowPlan = planBrows(face, { lead: "left", pins });

type MeshFile = Extract<LandmarkFile, { readonly markup: "mesh-478" }>;

/** A real face as a mesh saw it. */
export const meshFile: MeshFile = sampleFile();
export const photo: PlannableFace<"px"> = requirePlannable(
  fromMarkup("mesh-478", meshFile.landmarks, meshFile),
);
export const onPhoto: BrowPlan = planOnPhoto(photo, turnToFront(photo, scaleFromIris(photo)));

export const check: DrawnCheck = checkDrawn(plan, {
  dots: {
    right: { upperStart: pointOnSide({ distance: 25, height: 12 }, "right") },
    left: { upperArch: pointOnSide({ distance: 40.8, height: 27 }, "left") },
  },
  readings: { right: {}, left: { front: measured(40, 0.1) } },
});

export const weighed: WeighedChoices = weighChoices(face, [
  { lead: "left", thickness: { start: mm(7), body: mm(6), arch: mm(5) }, levels: "higher" },
  { lead: "right", carry: "measure", start: "alare-vertical", arch: "alare-through-pupil", pins },
  { arch: "brow-length-share", frontShare: 2 / 3 },
  { noseBent: true, tailHeight: "level-with-upper-start", shape: { angularity: 0.5 } },
]);

/** What is covered and what is not, what is overlapped and what is clear. */
const AREAS: readonly SkinArea[] = (["cover", "stay-off"] as const).flatMap((aim) =>
  [30, 24].map((top): SkinArea => {
    const edge = mm([
      [24, top - 5],
      [34, top - 5],
      [30, top],
    ]);
    return { name: "«»", aim, edge, margin: mm(0.5) };
  }),
);

/** How each picture is drawn. */
export interface Drawn {
  readonly words: Words;
  readonly theme?: Theme;
  readonly screen?: Screen;
}

/** Every picture of the library, by what is drawn; names of captures are figures, which no language changes. */
export const PICTURES: readonly (readonly [
  what: string,
  drawn: (look: Drawn) => readonly string[],
])[] = [
  ["a plan", (look) => [drawPlan(plan, { ...look, overlap: true, check })]],
  ["a plan on a photo", (look) => [drawPlan(onPhoto, { ...look, overlap: true })]],
  ["a strip", (look) => [drawStrip(plan, look)]],
  ["a sheet", (look) => [drawSheet(plan, { ...look, overlap: true, check })]],
  [
    "a sheet of two thirds",
    (look) => [drawSheet(planBrows(face, { arch: "brow-length-share" }), look)],
  ],
  ["a sheet of a photo", (look) => [drawSheet(onPhoto, look)]],
  ["a practice sheet", (look) => [drawPractice(plan, look)]],
  ["dimensions", (look) => [drawDimensions(plan, look)]],
  ["choices", (look) => [drawChoices(face, weighed, look)]],
  ["variants", (look) => [drawVariants(face, weighed, look)]],
  ["a plan over areas of skin", (look) => [drawAreas(plan, AREAS, look)]],
  ["a plan in another capture", (look) => [drawCarried(carryInto(plan, face), face, look)]],
  [
    "results",
    (look) => [
      drawResult(
        plan,
        [
          { name: "1", weeks: 0, face },
          { name: "2", weeks: 6, face },
        ],
        look,
      ),
    ],
  ],
  [
    "captures",
    (look) => [
      drawCaptures(
        [
          { name: "1", face },
          { name: "2", face },
        ],
        look,
      ),
    ],
  ],
];

function sampleFile(): MeshFile {
  const file = parseLandmarkFile(
    JSON.parse(readFileSync("examples/data/sample-face.json", "utf8")),
  );
  if (file.markup !== "mesh-478") throw new Error(file.markup);
  return file;
}

/** All texts of a picture, its title and description among them. */
export function textsOf(source: string): readonly string[] {
  const inside = ({ name, text, children }: XmlElement): readonly string[] => [
    ...(name === "style" ? [] : [text]),
    ...children.flatMap(inside),
  ];
  return inside(parseXml(source));
}
