import { depthAt } from "brow-geometry/landmarks";
import { type Measured, mm, type Point } from "brow-geometry";
import { syntheticPlan } from "../support/synthetic-plan.js";

const UNIT = 10;
const COLOURS = { skin: "#8a5a44", ruler: "#1a3aa0", tape: "#8a5a44", photo: "#0f7f86" };

/** A brow seen from above: by ruler, by tape and on the photo are three lengths. */
export function lengthsFigure(): string {
  const { skin, dots, measures } = syntheticPlan;
  const { front, frontAlong, frontOnPhoto, tail, tailAlong, tailOnPhoto } = measures.left;
  const { upperStart, upperArch, tailEnd } = dots.left;

  const seenFromAbove = (at: Point<"mm">): Spot => [UNIT * at[0], -UNIT * depthAt(at, skin)];
  const start = seenFromAbove(upperStart);
  const arch = seenFromAbove(upperArch);
  const end = seenFromAbove(tailEnd);
  const spots = [start, arch, end];
  const surface = Array.from({ length: 65 }, (_, x) => seenFromAbove(mm([x, 0])));

  const rows = [
    ["by ruler, straight on the skin", COLOURS.ruler, front, tail],
    ["by tape, along the skin", COLOURS.tape, frontAlong, tailAlong],
    ["on the photo, straight", COLOURS.photo, frontOnPhoto, tailOnPhoto],
  ] as const;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="-20 -90 900 470" role="img" font-family="Helvetica, Arial, sans-serif" font-size="15">`,
    "<title>Lengths on the skin and on the photo, seen from above</title>",
    `<rect x="-20" y="-90" width="900" height="470" fill="#ffffff"/>`,
    `<text x="0" y="-66" font-weight="bold">the left brow seen from above; the camera is at the top</text>`,
    path(surface, COLOURS.skin, 3),
    path(spots, COLOURS.ruler, 2.5),
    ...spots.map((spot) => path([spot, [spot[0], -20]], COLOURS.photo, 1, "4 4")),
    path(
      spots.map(([x]): Spot => [x, -20]),
      COLOURS.photo,
      2.5,
    ),
    ...spots.map(
      ([x, y]) => `<circle cx="${fixed(x)}" cy="${fixed(y)}" r="6" fill="${COLOURS.ruler}"/>`,
    ),
    ...named(start, "start"),
    ...named(arch, "arch"),
    ...named(end, "tail end"),
    `<path d="M0 -40V260" stroke="#111111" stroke-dasharray="14 5 3 5"/>`,
    `<text x="8" y="255">midline</text>`,
    ...rows.flatMap(([name, colour, oneFront, oneTail], index) => {
      const y = 300 + 26 * index;
      return [
        `<path d="M0 ${y - 5}H36" stroke="${colour}" stroke-width="3"/>`,
        `<text x="46" y="${y}">${name}: front ${inMm(oneFront)}, tail ${inMm(oneTail)}</text>`,
      ];
    }),
    "</svg>\n",
  ].join("\n");
}

type Spot = readonly [x: number, y: number];

function named([x, y]: Spot, name: string): readonly string[] {
  return [`<text x="${fixed(x - 14)}" y="${fixed(y + 22)}" text-anchor="end">${name}</text>`];
}

function path(spots: readonly Spot[], colour: string, width: number, dashes = "none"): string {
  const d = spots.map(([x, y]) => `${fixed(x)} ${fixed(y)}`).join("L");
  return `<path d="M${d}" fill="none" stroke="${colour}" stroke-width="${width}" stroke-dasharray="${dashes}"/>`;
}

function fixed(value: number): string {
  return value.toFixed(1);
}

function inMm(length: Measured | undefined): string {
  return `${length?.value.toFixed(1) ?? "–"} mm`;
}
