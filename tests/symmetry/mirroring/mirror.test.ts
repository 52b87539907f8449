import { fc, test } from "@fast-check/vitest";
import { distance, lineThrough, type Line } from "brow-geometry/geometry";
import { FACE_MIDLINE, mirror, mm, px, type Point } from "brow-geometry";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import AffineTransformation from "jsts/org/locationtech/jts/geom/util/AffineTransformation.js";
import { describe, expect, it } from "vitest";
import {
  anyDeepPoint,
  anyFace,
  anyFlatPoint,
  anyLine,
  anyPolyline,
} from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { syntheticFace } from "../../support/synthetic-face.js";

/** The mirror image by JTS, through the npm package jsts. */
function mirrorByJts(point: Point<"px">, { through, direction }: Line<"px">): readonly number[] {
  const [x, y] = through;
  const image = AffineTransformation.reflectionInstance(
    x,
    y,
    x + 1000 * direction[0],
    y + 1000 * direction[1],
  ).transform(new Coordinate(point[0], point[1]), new Coordinate(0, 0));
  return [image.x, image.y];
}

describe("mirror", () => {
  it.each([
    ["exact", [3, 1], [0, 0], [1, 2], [-1, 3]],
    // JTS `AffineTransformation`, through the npm package jsts.
    ["in a photo", [400, 200], [100, 0], [120, 300], [-170.796460176991, 238.053097345133]],
  ] as const)("a point across a line, %s", (_, point, from, to, expected) => {
    expectClose(mirror(px(point), lineThrough(px(from), px(to))), expected, 1e-12);
  });

  test.prop([anyFlatPoint<"px">(), anyLine<"px">()])("agrees with JTS", (point, across) => {
    expectClose(mirror(point, across), mirrorByJts(point, across), 1e-8);
  });

  test.prop([fc.oneof(anyFlatPoint<"px">(), anyDeepPoint<"px">()), anyLine<"px">()])(
    "twice is the identity",
    (point, across) => {
      expectClose(mirror(mirror(point, across), across), point, 1e-9);
    },
  );

  test.prop([anyFlatPoint<"px">(), anyFlatPoint<"px">(), anyLine<"px">()])(
    "keeps distances",
    (one, other, across) => {
      const apart = distance(mirror(one, across), mirror(other, across));
      expectClose(apart, distance(one, other), 1e-9);
    },
  );

  test.prop([anyPolyline<"px">(), anyLine<"px">()])(
    "maps polylines, brows and dots point by point",
    (line, across) => {
      const image = line.map((point) => mirror(point, across));
      expect(mirror(line, across)).toEqual(image);
      expect(mirror({ upper: line }, across)).toEqual({ upper: image });
      expect(mirror({ upper: line, lower: line }, across)).toEqual({ upper: image, lower: image });
      const [first = px([0, 0])] = line;
      expect(mirror({ tailEnd: first }, across)).toEqual({ tailEnd: mirror(first, across) });
    },
  );

  test.prop([anyFace(), anyLine<"mm">(100)])("twice brings a face back", (face, across) => {
    expectClose(mirror(mirror(face, across), across), face, 1e-9);
  });

  it("exchanges the sides of a face: a symmetric one stays as it is", () => {
    expectClose(mirror(syntheticFace(), FACE_MIDLINE), syntheticFace(), 1e-12);
  });

  it("exchanges the sides of a face's symmetricPoints", () => {
    const face = {
      ...syntheticFace(),
      symmetricPoints: {
        pairs: [{ right: mm([-3, 4, 5]), left: mm([2, 3, 4]) }],
        middle: [mm([1, 2, 3])],
      },
    };
    expect(mirror(face, FACE_MIDLINE).symmetricPoints).toEqual({
      pairs: [{ right: [-2, 3, 4], left: [3, 4, 5] }],
      middle: [[-1, 2, 3]],
    });
  });
});
