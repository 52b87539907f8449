import { fromMarkup } from "brow-geometry";
import { parseLandmarkFile } from "brow-geometry/schema";
import address from "../../../data/sample-face.json?url";
import type { Shot } from "../appointment/basis.js";
import { drawnClient } from "./drawn-client.js";
import { shotOf } from "./shot.js";

/** Side of the picture, in pixels, and of what it shows, in widths of the face. */
const SIDE = 1400;
const ROOM = 1.9;

/** The landmarks of a real face, as a face finder left them, on a client who is drawn. */
export async function exampleShot(): Promise<Shot> {
  const file = parseLandmarkFile(await (await fetch(address)).json());
  if (file.markup !== "mesh-478" || file.image === undefined) throw new RangeError("no such face");
  const { width, height } = file.image;
  const points = file.landmarks.map((point): readonly number[] => {
    const [x = 0, y = 0, z = 0] = Array.isArray(point) ? (point as readonly number[]) : [];
    return [x * width, y * height, z * width];
  });
  // The face alone, as a portrait shows it.
  const [across, down] = [points.map(([x = 0]) => x), points.map(([, y = 0]) => y)];
  const [left, right] = [Math.min(...across), Math.max(...across)];
  const [top, bottom] = [Math.min(...down), Math.max(...down)];
  const size = ROOM * (right - left);
  const [x0, y0] = [(left + right - size) / 2, (top + bottom - size) / 2];
  const shares = points.map(([x = 0, y = 0, z = 0]) => [
    (x - x0) / size,
    (y - y0) / size,
    z / size,
  ]);
  const image = { width: SIDE, height: SIDE };
  const found = fromMarkup("mesh-478", shares, { image, coordinates: "normalised" });
  const shot = shotOf(found, { kind: "irises" });
  const spots = shares.map(([x = 0, y = 0]) => [SIDE * x, SIDE * y] as const);
  return {
    ...shot,
    picture: await drawnClient(spots, shot.hair, image),
    // Her hair is drawn where the borders are.
    traced: { right: true, left: true },
  };
}
