import {
  drawPlan,
  faceFrame,
  planBrows,
  planOnPhoto,
  requirePlannable,
  type Scale,
} from "brow-geometry";
import { photograph } from "../support/photograph.js";
import { syntheticFace } from "../support/synthetic-face.js";
import { figure } from "./figure.js";

const scale: Scale = { from: "px", to: "mm", factor: 0.2, u: 0, source: "given", notes: [] };
const photo = { width: 800, height: 640 };
const MARGIN = 40;

/** One face in both spaces: tilted on a photo, and upright in millimetres. */
export function spacesFigure(): string {
  const face = syntheticFace();
  const onPhoto = requirePlannable(photograph(face, { factor: 0.2, tilt: 8, at: [390, 300] }));
  const tilted = drawPlan(planOnPhoto(onPhoto, faceFrame(onPhoto, scale)), {
    photo,
    legend: false,
    title: "The face on its photo",
  });
  const upright = drawPlan(planBrows(face), { legend: false, title: "The face in millimetres" });
  return figure("The two spaces", 2, [
    {
      caption: "photo: px, origin top left, y down",
      drawing: withAxes(framed(tilted), { x: 0, y: 0, size: 140, up: false }),
    },
    {
      caption: "face: mm, origin between the inner eye corners, y up",
      drawing: withAxes(upright, { x: 0, y: 0, size: 22, up: true }),
    },
  ]);
}

/** The photo's edge, with some room about it. */
function framed(drawing: string): string {
  const { width, height } = photo;
  const room = `${-MARGIN} ${-MARGIN} ${width + 2 * MARGIN} ${height + 2 * MARGIN}`;
  return drawing
    .replace(/viewBox="[^"]*"/, `viewBox="${room}"`)
    .replace("</desc>", `</desc><rect width="${width}" height="${height}" fill="#eeeeee"/>`);
}

interface Axes {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly up: boolean;
}

function withAxes(drawing: string, { x, y, size, up }: Axes): string {
  const tip = size / 8;
  const down = up ? -1 : 1;
  const end = y + down * size;
  const arrows = [
    `M${x} ${y}H${x + size}m${-tip} ${-tip / 2}l${tip} ${tip / 2}l${-tip} ${tip / 2}`,
    `M${x} ${y}V${end}m${-tip / 2} ${-down * tip}l${tip / 2} ${down * tip}l${tip / 2} ${-down * tip}`,
  ];
  const label = `font-size="${size / 5}" font-weight="bold" fill="#111111"`;
  return drawing.replace(
    "</svg>",
    [
      `<path d="${arrows.join("")}" fill="none" stroke="#111111" stroke-width="${size / 40}"/>`,
      `<text x="${x + size + tip / 2}" y="${y + size / 16}" ${label}>x</text>`,
      `<text x="${x + tip / 2}" y="${end + (up ? 0 : size / 5)}" ${label}>y</text>`,
      "</svg>",
    ].join("\n"),
  );
}
