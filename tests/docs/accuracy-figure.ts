import {
  type Face,
  faceFrame,
  measured,
  mm,
  planOnPhoto,
  px,
  readRuler,
  requirePlannable,
  type Scale,
  scaleFromIris,
  scaleFromReference,
} from "brow-geometry";
import { type LandmarkSource } from "brow-geometry/landmarks";
import { photograph } from "../support/photograph.js";
import { syntheticFace } from "../support/synthetic-face.js";

/** What each way of measuring is worth, for a length and for a difference between the sides. */
export function accuracyFigure(): string {
  const rows = worths();
  const bottom = TOP + ROW * rows.length;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${bottom + 84}" role="img" font-family="Helvetica, Arial, sans-serif" font-size="15">`,
    "<title>What each way of measuring is worth</title>",
    `<rect width="100%" height="100%" fill="#ffffff"/>`,
    `<text x="16" y="28" font-weight="bold">outer eye corner to tail end, by ruler about 25 mm: 95 % intervals about the truth</text>`,
    `<rect x="${at(-1)}" y="${TOP - 10}" width="${(at(1) - at(-1)).toFixed(1)}" height="${bottom - TOP + 14}" fill="#eeeeee"/>`,
    ...rows.flatMap(({ name, length, difference }, index) => {
      const y = TOP + ROW * index;
      return [
        `<text x="16" y="${y + 19}">${name}</text>`,
        bar(length, y + 4, COLOURS.length),
        bar(difference, y + 18, COLOURS.difference),
      ];
    }),
    ...TICKS.flatMap((tick) => [
      `<path d="M${at(tick)} ${bottom + 4}v7" stroke="#111111"/>`,
      `<text x="${at(tick)}" y="${bottom + 27}" text-anchor="middle">${tick < 0 ? `−${-tick}` : tick}</text>`,
    ]),
    `<path d="M${at(-REACH)} ${bottom + 4}H${at(REACH)}M${at(0)} ${TOP - 10}V${bottom + 4}" stroke="#111111"/>`,
    `<text x="${at(REACH)}" y="${bottom + 27}" text-anchor="end">mm</text>`,
    legend(16, bottom + 64, COLOURS.length, "one length"),
    legend(170, bottom + 64, COLOURS.difference, "left less right"),
    `<rect x="360" y="${bottom + 52}" width="22" height="14" fill="#eeeeee"/>`,
    `<text x="390" y="${bottom + 64}">the tolerance of 1 mm between the sides</text>`,
    "</svg>\n",
  ].join("\n");
}

const WIDTH = 960;
const TOP = 56;
const ROW = 44;
const REACH = 8;
const TICKS = [-6, -4, -2, 0, 2, 4, 6];
const COLOURS = { length: "#1a3aa0", difference: "#c9641a" };

function at(millimetres: number): number {
  return Math.round(6200 + (3200 / REACH) * millimetres) / 10;
}

function bar(u: number, y: number, colour: string): string {
  const reach = 1.96 * u;
  return `<rect x="${at(-reach)}" y="${y}" width="${((640 / REACH) * reach).toFixed(1)}" height="10" fill="${colour}"/>`;
}

function legend(x: number, y: number, colour: string, text: string): string {
  return `<rect x="${x}" y="${y - 10}" width="22" height="10" fill="${colour}"/><text x="${x + 30}" y="${y}">${text}</text>`;
}

interface Worth {
  readonly name: string;
  readonly length: number;
  readonly difference: number;
}

/** The face mesh with irises, as the library states it. */
const MESH: LandmarkSource = {
  markup: "mesh-478",
  uncertainty: { default: mm(1.3), landmarks: { limbusMedial: mm(0.5), limbusLateral: mm(0.5) } },
  ringFactor: measured(1.11, 0.02),
  depth: "none",
};

function worths(): readonly Worth[] {
  const byHand = photograph(syntheticFace(), { factor: 0.2, tilt: 0, at: [900, 700] });
  const byMesh: Face<"px"> = { ...byHand, source: MESH };
  const ruler = scaleFromReference(px([700, 400]), px([950, 400]), mm(50));
  const reading = readRuler(mm(25)).u;
  return [
    { name: "a ruler on the skin", length: reading, difference: Math.SQRT2 * reading },
    { name: "placed by hand, a ruler in the photo", ...worthOf(byHand, ruler) },
    { name: "placed by hand, scale by iris", ...worthOf(byHand, scaleFromIris(byHand)) },
    { name: "face mesh, a ruler in the photo", ...worthOf(byMesh, ruler) },
    { name: "face mesh, scale by iris", ...worthOf(byMesh, scaleFromIris(byMesh)) },
  ];
}

function worthOf(photo: Face<"px">, scale: Scale): Omit<Worth, "name"> {
  const { naturalMeasures, naturalComparison } = planOnPhoto(
    requirePlannable(photo),
    faceFrame(photo, scale),
  );
  const difference = naturalComparison.differences.find(
    ({ measure }) => measure === "exocanthionToTailEnd",
  );
  return {
    length: naturalMeasures.left.exocanthionToTailEnd?.u ?? 0,
    difference: difference?.difference.u ?? 0,
  };
}
