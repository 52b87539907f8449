import type { Direction, Line } from "../geometry/index.js";
import type { Face, SideLandmark } from "../landmarks/index.js";
import type { Point } from "../units/index.js";
import { type Guide, GUIDE_LANDMARKS, type GuideConvention } from "./guide.js";
import { requireLandmarksOn } from "./require-guide-landmarks.js";

/** The direction of a vertical: along the midline, from chin to forehead. */
export const UPWARDS: Direction = [0, 1];

/** A guide with the line that its rule draws from its one landmark, or from its two. */
export function drawGuide<Convention extends GuideConvention>(
  guide: Pick<Guide<Convention>, "mark" | "convention" | "side">,
  face: Face<"mm">,
  lineOf: (first: Point<"mm">, second: Point<"mm">) => Line<"mm">,
): Guide<Convention> {
  const from: readonly SideLandmark[] = GUIDE_LANDMARKS[guide.convention];
  requireLandmarksOn(`${guide.mark}Guide`, face, [guide.side], guide.convention);
  const [first, second = first] = from.map((name) => face[guide.side][name]);
  const { mark, convention, side } = guide;
  return {
    mark,
    convention,
    side,
    line: lineOf(first as Point<"mm">, second as Point<"mm">),
    from,
    standIns: (face.standIns ?? []).filter(({ landmark }) =>
      from.some((name) => name === landmark),
    ),
  };
}
