import { type Unit } from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import type { Face } from "./face.js";
import { senseOf } from "./sense-of-face.js";

/**
 * Refuses a face whose right and left are swapped or whose picture is mirrored: from the client's right to
 * the left, its forehead lies on the side that only an unmirrored picture has. A tilted head passes.
 */
export function requireSideOrder<U extends Unit>(face: Face<U>, yAxis: "down" | "up"): void {
  const { right, left } = face;
  const up = yAxis === "down" ? -1 : 1;
  const { leftwards, upwards = [0, up] } = senseOf(face);
  if (leftwards === undefined) return;
  const [x, y] = leftwards;
  const eyes = [right.exocanthion, right.endocanthion, left.endocanthion, left.exocanthion].filter(
    (corner) => corner !== undefined,
  );
  const along = eyes.map((corner) => corner[0] * x + corner[1] * y);
  const inOrder = along.every((place, index) => index === 0 || place > (along[index - 1] ?? place));
  if (inOrder && up * (x * upwards[1] - y * upwards[0]) > 0) return;
  refuse(
    "sides-swapped",
    "eye corners from the client's right to the left",
    eyes.map((corner) => [corner[0], corner[1]]),
    `the client's own right and left, y ${yAxis}, or mirrored: "frame" or "coordinates"`,
  );
}
