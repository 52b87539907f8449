import {
  type Choices,
  faceFrame,
  mm,
  planBrows,
  planDots,
  planOnPhoto,
  px,
  recordOf,
  replay,
  requirePlannable,
  scaleFromReference,
} from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";
import { expect, it } from "vitest";
import { refusal } from "../support/refusal.js";
import { syntheticFace } from "../support/synthetic-face.js";

const face = syntheticFace();

/** Choices that are refused at the door, by an inner guide and by an inner outline. */
const WRONG: readonly Choices[] = [
  { frontShare: 3 },
  { pins: [{ side: "left", dot: "upperArch", at: mm([64, 27]) }] },
  { pins: [{ side: "left", dot: "upperBody", at: mm([27, 34]) }] },
];

it.each(WRONG)("a refusal of %j names the function that was called", (choices) => {
  const record = recordOf({ kind: "face", face });
  const photo = requirePlannable(mapFace(face, ([x, y]) => px([500 + 10 * x, 500 - 10 * y])));
  const frame = faceFrame(photo, scaleFromReference(px([0, 0]), px([100, 0]), mm(10)));
  const where = (call: () => unknown): string => refusal(call).detail.where;
  expect(where(() => planDots(face, choices))).toBe("planDots");
  expect(where(() => planBrows(face, choices))).toBe("planBrows");
  expect(where(() => recordOf({ kind: "face", face }, choices))).toBe("recordOf");
  expect(where(() => replay({ ...record, choices }))).toBe("replay");
  expect(where(() => planOnPhoto(photo, frame, choices))).toBe("planOnPhoto");
});
