import type { SampleFace } from "./sample-faces.js";

/**
 * Points of the face mesh at the places of the 98 points of the WFLW markup, written down from that
 * markup's description and not from the library's tables.
 */
const PLACES: readonly number[] = [
  // 0–32, the contour from the client's right ear over the chin (16) to the left one.
  ...[162, 127, 227, 234, 137, 93, 177, 132, 58, 172, 136, 150, 149, 176, 148, 171],
  152,
  ...[396, 377, 400, 378, 379, 365, 397, 288, 361, 401, 323, 366, 454, 447, 356, 389],
  // 33–37 and 38–41, the right brow: upper border to the nose, lower border from the nose.
  ...[70, 63, 105, 66, 107],
  ...[55, 65, 52, 53],
  // 42–46 and 47–50, the left brow: upper border from the nose, lower border to the nose.
  ...[336, 296, 334, 293, 300],
  ...[283, 282, 295, 285],
  // 51–54 and 55–59, the bridge of the nose and its base.
  ...[168, 197, 5, 4],
  ...[98, 97, 2, 326, 327],
  // 60–67 and 68–75, the eyes.
  ...[33, 160, 159, 158, 133, 153, 145, 144],
  ...[362, 385, 386, 387, 263, 373, 374, 380],
  // 76–87 and 88–95, the lips outside and inside.
  ...[61, 40, 37, 0, 267, 270, 291, 321, 314, 17, 84, 91],
  ...[78, 81, 13, 311, 308, 402, 14, 178],
  // 96 and 97, the pupils.
  ...[468, 473],
];

/** A real face as 98 points in pixels, from its mesh: no detector of that markup was at hand. */
export function points98OfMesh({ landmarks, image }: SampleFace): readonly (readonly number[])[] {
  return PLACES.map((index) => {
    const [x = Number.NaN, y = Number.NaN] = landmarks[index] ?? [];
    return [x * image.width, y * image.height];
  });
}
