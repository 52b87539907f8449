/**
 * Draws contact sheets: `npm run docs:sheets -- FOLDER`. Of real faces, to look at every brow: each row is a face,
 * each column a set of choices; brows as they grow are dashed, what shape findings are about is ringed and named. And
 * of every picture, to look at its words: each row is a picture, each column a catalogue, on pages that run either way.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import {
  type Choices,
  faceFrame,
  type Face,
  GeometryError,
  mm,
  outline,
  planDots,
  type PlannableFace,
  requirePlannable,
  type Scale,
  scaleFromIris,
  shapeFindings,
  toFace,
} from "brow-geometry";
import { pathData } from "brow-geometry/geometry";
import { outlinePath } from "brow-geometry/proportions";
import type { Point, Polyline } from "brow-geometry";
import { ANATOMICAL, ENGLISH, SPANISH } from "brow-geometry/words";
import { SIDES } from "../../src/units/internal.js";
import { PICTURES } from "../support/every-picture.js";
import { PSEUDO_ARABIC, PSEUDO_RTL } from "../support/pseudo-words.js";
import { foundFace, londonFaces } from "../support/london-faces.js";
import {
  faceOfMesh,
  faceOfPoints68,
  meshSamples,
  points68Samples,
} from "../support/sample-faces.js";

const CHOICES: readonly (readonly [title: string, choices: Choices])[] = [
  ["nothing chosen", {}],
  [
    "arch two thirds out, tail level with the lower start",
    {
      arch: "brow-length-share",
      tailHeight: "level-with-lower-start",
    },
  ],
  ["heights at most 1.5 mm off the hair", { lead: "middle", levelLimit: mm(1.5) }],
];

const INCHES = { lengths: "inch", inchMarks: 32 } as const;

const BOX = { left: -72, top: -44, width: 144, height: 56 };

const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error("needs a folder to write to");
mkdirSync(folder, { recursive: true });
for (const [name, faces] of Object.entries(sheets())) {
  writeFileSync(join(folder, `${name}.html`), sheetOf(faces));
}

for (const width of [375, 1440]) {
  for (const direction of ["ltr", "rtl"] as const) {
    writeFileSync(join(folder, `words-${width}-${direction}.html`), wordsSheet(width, direction));
  }
}

/** A face on its photo, and how many millimetres a pixel there is. */
interface Seen {
  readonly photo: Face<"px">;
  readonly millimetres: number;
}

function sheets(): Readonly<Record<string, readonly Seen[]>> {
  const faces = londonFaces();
  const irises = meshSamples.map((sample) => scaleFromIris(faceOfMesh(sample)).factor);
  return {
    "by-hand": faces.map(({ hand, millimetres }) => ({ photo: hand, millimetres })),
    "face-mesh": faces.map((face) => ({ ...face, photo: foundFace(face, "mesh-478") })),
    "points-68": faces.map((face) => ({ ...face, photo: foundFace(face, "points-68") })),
    "face-mesh-samples": meshSamples.map((sample, index) => ({
      photo: faceOfMesh(sample),
      millimetres: irises[index] ?? Number.NaN,
    })),
    // The same people in the same order: the irises of the mesh tell their scale.
    "points-68-samples": points68Samples.map((sample, index) => ({
      photo: faceOfPoints68(sample),
      millimetres: irises[index] ?? Number.NaN,
    })),
  };
}

/** Every picture in every catalogue and theme, as wide as a screen, on a page of a direction. */
function wordsSheet(width: number, direction: "ltr" | "rtl"): string {
  const columns = [
    { name: "English", words: ENGLISH },
    { name: "Spanish", words: SPANISH },
    { name: "anatomical, in inches, dark", words: { ...ANATOMICAL, ...INCHES }, theme: "dark" },
    { name: "from right to left", words: PSEUDO_RTL },
    { name: "with digits of Arabic, dark", words: PSEUDO_ARABIC, theme: "dark" },
  ] as const;
  const head = columns.map(({ name }) => `<th>${name}</th>`).join("");
  const rows = PICTURES.map(([what, drawn]) => {
    const cells = columns.map((look) => `<td>${drawn(look).join("<hr>")}</td>`).join("");
    return `<tr><th>${what}</th>${cells}</tr>`;
  });
  return `<!doctype html><html dir="${direction}"><meta charset="utf-8"><style>
table{border-collapse:collapse;font:14px sans-serif}td{border:1px solid #ccc;padding:0;vertical-align:top}
svg{display:block;width:${width}px;height:auto}
</style><table><tr><th></th>${head}</tr>${rows.join("\n")}</table></html>\n`;
}

function sheetOf(faces: readonly Seen[]): string {
  const head = CHOICES.map(([title]) => `<th>${title}</th>`).join("");
  const rows = faces.map((seen, index) => {
    const cells = CHOICES.map(([, choices]) => `<td>${cellOf(seen, choices)}</td>`).join("");
    return `<tr><th>${index}</th>${cells}</tr>`;
  });
  return `<!doctype html><meta charset="utf-8"><style>
table{border-collapse:collapse;font:10px sans-serif}td{border:1px solid #ccc;padding:0}svg{display:block;width:430px}
</style><table><tr><th></th>${head}</tr>${rows.join("\n")}</table>\n`;
}

function cellOf({ photo, millimetres: factor }: Seen, choices: Choices): string {
  try {
    const scale: Scale = { from: "px", to: "mm", factor, u: 0, source: "given", notes: [] };
    const face = requirePlannable(toFace(photo, faceFrame(photo, scale)));
    return pictureOf(face, choices);
  } catch (error) {
    if (!(error instanceof GeometryError)) throw error;
    return `<p>${error.message}</p>`;
  }
}

function pictureOf(face: PlannableFace, choices: Choices): string {
  const plan = planDots(face, choices);
  const parts = SIDES.flatMap((side) => {
    const { brow, upperLid = [], lowerLid = [] } = face[side];
    const planned = pathData(outlinePath(outline(plan.dots[side], plan.choices.shape)), 2);
    return [
      ...[upperLid, lowerLid].map((line) => lineOf(line, 'stroke="#889" stroke-width=".4"')),
      `<path d="${planned}" transform="scale(1 -1)" fill="#2a52be30" stroke="#1f3a93" stroke-width=".5"/>`,
      ...[brow.upper, brow.lower ?? []].map((line) =>
        lineOf(line, 'stroke="#c60" stroke-width=".5" stroke-dasharray="1.2 .8"'),
      ),
    ];
  });
  const found = shapeFindings(plan).flatMap(({ code, at: [x, y] }, index) => [
    `<circle cx="${x}" cy="${-y}" r="2" fill="none" stroke="#d00" stroke-width=".5"/>`,
    `<text x="${BOX.left + 1}" y="${BOX.top + 4 + 3.4 * index}" font-size="3.2" fill="#d00">${code}</text>`,
  ]);
  const { left, top, width, height } = BOX;
  return `<svg viewBox="${left} ${top} ${width} ${height}">${[...parts, ...found].join("")}</svg>`;
}

function lineOf(line: Polyline<"mm">, look: string): string {
  const points = line.map(([x, y]: Point<"mm">) => `${x},${-y}`).join(" ");
  return `<polyline points="${points}" fill="none" ${look}/>`;
}
