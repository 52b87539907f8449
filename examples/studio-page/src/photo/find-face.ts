import { type Face, fromMarkup } from "brow-geometry";
import type { Picture } from "../appointment/basis.js";
import { faceMesh, type Look } from "./face-mesh.js";
import { imageOf } from "./open-photo.js";

/** A square part of a picture, in its pixels. */
interface Window {
  readonly x: number;
  readonly y: number;
  readonly size: number;
}

interface Point {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Pixels that a window is looked at with, at most. */
const PIXELS = 1024;
/** Room around a face in the window that it is read in, in sizes of the face. */
const ROOM = 2;

/** The faces on a photo, the largest first. */
export async function findFaces(picture: Picture): Promise<readonly Face<"px">[]> {
  const [look, image] = await Promise.all([faceMesh(), imageOf(picture)]);
  const { width, height } = picture;
  const size = Math.max(width, height);
  const whole = { x: (width - size) / 2, y: (height - size) / 2, size };
  const faces: Face<"px">[] = [];
  for (const coarse of bySize(await facesIn(look, image, whole))) {
    // Read once more in a window of its own: where it stood in the picture then makes no difference.
    const face = nearest(await facesIn(look, image, windowAround(coarse)), coarse) ?? coarse;
    const landmarks = face.map(({ x, y, z }) => ({ x: x / width, y: y / height, z: z / width }));
    faces.push(
      fromMarkup("mesh-478", landmarks, { image: { width, height }, coordinates: "normalised" }),
    );
  }
  return faces;
}

/** The faces in a window, in pixels of the picture. */
async function facesIn(
  look: Look,
  image: HTMLImageElement,
  { x: left, y: top, size }: Window,
): Promise<readonly (readonly Point[])[]> {
  const canvas = document.createElement("canvas");
  const side = Math.round(Math.min(size, PIXELS));
  canvas.width = canvas.height = side;
  const context = canvas.getContext("2d");
  if (context === null) throw new Error("This browser cannot draw.");
  const scale = side / size;
  context.fillStyle = "#808080";
  context.fillRect(0, 0, side, side);
  context.imageSmoothingQuality = "high";
  context.setTransform(scale, 0, 0, scale, -left * scale, -top * scale);
  context.drawImage(image, 0, 0);
  const faces = await look(canvas);
  return faces.map((face) =>
    face.map(({ x, y, z }) => ({ x: left + x * size, y: top + y * size, z: z * size })),
  );
}

function bySize(faces: readonly (readonly Point[])[]): readonly (readonly Point[])[] {
  return [...faces].sort((one, other) => sizeOf(other).size - sizeOf(one).size);
}

/** The face that a window was laid around: others may reach into it. */
function nearest(
  faces: readonly (readonly Point[])[],
  to: readonly Point[],
): readonly Point[] | undefined {
  const { x, y, size } = sizeOf(to);
  const away = (face: readonly Point[]) => {
    const { x: otherX, y: otherY } = sizeOf(face);
    return Math.hypot(otherX - x, otherY - y);
  };
  return [...faces]
    .filter((face) => away(face) < size / 2)
    .sort((one, other) => away(one) - away(other))[0];
}

function sizeOf(face: readonly Point[]): Window {
  const [across, down] = [face.map(({ x }) => x), face.map(({ y }) => y)];
  const [left, right] = [Math.min(...across), Math.max(...across)];
  const [top, bottom] = [Math.min(...down), Math.max(...down)];
  return {
    x: (left + right) / 2,
    y: (top + bottom) / 2,
    size: Math.max(right - left, bottom - top),
  };
}

function windowAround(face: readonly Point[]): Window {
  const { x, y, size: extent } = sizeOf(face);
  const size = Math.round(ROOM * extent);
  return { x: Math.round(x - size / 2), y: Math.round(y - size / 2), size };
}
