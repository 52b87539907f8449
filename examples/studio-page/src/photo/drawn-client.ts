import type { Sides } from "brow-geometry/units";
import type { Borders, Picture } from "../appointment/basis.js";
import type { Spot } from "../stage/box.js";
import { AS_IT_IS, pathOf } from "../stage/place.js";

/** Rings and lines of the face mesh that the picture is drawn from, by their numbers in it. */
const RINGS = {
  face: [
    10, 338, 297, 332, 284, 251, 389, 356, 454, 323, 361, 288, 397, 365, 379, 378, 400, 377, 152,
    148, 176, 149, 150, 136, 172, 58, 132, 93, 234, 127, 162, 21, 54, 103, 67, 109,
  ],
  lips: [61, 185, 40, 39, 37, 0, 267, 269, 270, 409, 291, 375, 321, 405, 314, 17, 84, 181, 91, 146],
  rightEye: [33, 246, 161, 160, 159, 158, 157, 173, 133, 155, 154, 153, 145, 144, 163, 7],
  leftEye: [263, 466, 388, 387, 386, 385, 384, 398, 362, 382, 381, 380, 374, 373, 390, 249],
} as const;
const LINES = {
  mouth: [61, 185, 40, 39, 13, 269, 270, 409, 291],
  nose: [129, 98, 97, 2, 326, 327, 358],
  rightLid: [33, 246, 161, 160, 159, 158, 157, 173, 133],
  leftLid: [263, 466, 388, 387, 386, 385, 384, 398, 362],
} as const;
const IRISES = [
  { centre: 468, edge: 469 },
  { centre: 473, edge: 474 },
] as const;

/** A client drawn from the landmarks of a real face: nobody's photo comes with this page. */
export async function drawnClient(
  points: readonly Spot[],
  brows: Sides<Borders>,
  size: Omit<Picture, "href">,
): Promise<Picture> {
  const image = new Image();
  image.src = `data:image/svg+xml,${encodeURIComponent(drawing(points, brows, size))}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = size.width;
  canvas.height = size.height;
  canvas.getContext("2d")?.drawImage(image, 0, 0);
  return { ...size, href: canvas.toDataURL("image/jpeg", 0.9) };
}

function drawing(
  points: readonly Spot[],
  brows: Sides<Borders>,
  { width, height }: Omit<Picture, "href">,
): string {
  const at = (index: number): Spot => points[index] ?? [0, 0];
  const path = (indices: readonly number[], end = "") => {
    const spots = indices.map(at);
    return `d="M${spots.map((spot) => spot.join(" ")).join("L")}${end}"`;
  };
  const ring = (indices: readonly number[], look: string) =>
    `<path ${path(indices, "Z")} ${look}/>`;
  const line = (indices: readonly number[], look: string) =>
    `<path ${path(indices)} fill="none" stroke-linecap="round" stroke-linejoin="round" ${look}/>`;
  const [left, right, top, chin] = [at(234)[0], at(454)[0], at(10)[1], at(152)[1]];
  const wide = right - left;
  const middle = (left + right) / 2;
  const step = wide / 100;
  const soft = (by: number) =>
    `<filter id="b${by}" filterUnits="userSpaceOnUse" x="0" y="0" width="${width}" height="${height}"><feGaussianBlur stdDeviation="${(by * step) / 10}"/></filter>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">
<defs>${[4, 8, 30].map(soft).join("")}
<radialGradient id="skin" gradientUnits="userSpaceOnUse" cx="${middle}" cy="${(top + chin) / 2}" r="${0.75 * wide}">
<stop stop-color="#e9bd9f"/><stop offset="1" stop-color="#c98e6c"/></radialGradient></defs>
<rect width="100%" height="100%" fill="#b9b2a8"/>
<ellipse cx="${middle}" cy="${top + 0.42 * wide}" rx="${0.68 * wide}" ry="${0.86 * wide}" fill="#3a2a22"/>
<rect x="${middle - 0.26 * wide}" y="${chin - 0.35 * wide}" width="${0.52 * wide}" height="${wide}" fill="#b97f5f"/>
<ellipse cx="${middle}" cy="${top + 0.1 * wide}" rx="${0.47 * wide}" ry="${0.34 * wide}" fill="url(#skin)"/>
${ring(RINGS.face, `fill="url(#skin)" stroke="#c98e6c" stroke-width="${step}" stroke-linejoin="round"`)}
${line(LINES.nose, `stroke="#a86a4b" stroke-width="${1.6 * step}" filter="url(#b8)"`)}
<path d="M${at(6).join(" ")}L${at(4).join(" ")}" stroke="#f4d3ba" stroke-width="${5 * step}" opacity=".7" filter="url(#b30)"/>
${ring(RINGS.lips, `fill="#b4605c" filter="url(#b4)"`)}
${line(LINES.mouth, `stroke="#7c3a3a" stroke-width="${0.8 * step}"`)}
${[RINGS.rightEye, RINGS.leftEye].map((eye) => ring(eye, `fill="#8a5a44" stroke="#8a5a44" stroke-width="${5 * step}" opacity=".45" filter="url(#b8)"`)).join("")}
${[RINGS.rightEye, RINGS.leftEye].map((eye, index) => `<clipPath id="e${index}">${ring(eye, "")}</clipPath>${ring(eye, `fill="#f4efe9"`)}`).join("")}
${IRISES.map(({ centre, edge }, index) => {
  const [x, y] = at(centre);
  const radius = Math.hypot(at(edge)[0] - x, at(edge)[1] - y);
  const disc = (share: number, fill: string) =>
    `<circle cx="${x}" cy="${y}" r="${share * radius}" fill="${fill}" clip-path="url(#e${index})"/>`;
  return `${disc(1, "#5b3a24")}${disc(0.45, "#1b120d")}<circle cx="${x + 0.3 * radius}" cy="${y - 0.3 * radius}" r="${0.16 * radius}" fill="#fff"/>`;
}).join("")}
${[LINES.rightLid, LINES.leftLid].map((lid) => line(lid, `stroke="#2d1d17" stroke-width="${1.3 * step}"`)).join("")}
${[brows.right, brows.left].map((brow) => `<path d="${hairOf(brow)}" fill="#4a3327" opacity=".85" filter="url(#b4)"/>`).join("")}
</svg>`;
}

function hairOf({ upper, lower }: Borders): string {
  return pathOf(
    [...upper, ...[...lower].reverse()].map((point) => AS_IT_IS(point)),
    true,
  );
}
