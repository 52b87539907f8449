import { fc, test } from "@fast-check/vitest";
import {
  distance,
  distanceFromLine,
  lineThrough,
  pointOnLine,
  reflectAcross,
} from "brow-geometry/geometry";
import { mm, px } from "brow-geometry";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import AffineTransformation from "jsts/org/locationtech/jts/geom/util/AffineTransformation.js";
import { describe, it } from "vitest";
import { anyDeepPoint, anyFlatPoint, anyLine } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

describe("reflect", () => {
  it("agrees with the vectors: one exact, one from JTS through jsts", () => {
    expectClose(reflectAcross(mm([3, 1]), lineThrough(mm([0, 0]), mm([1, 2]))), [-1, 3], 1e-15);
    expectClose(
      reflectAcross(px([400, 200]), lineThrough(px([100, 0]), px([120, 300]))),
      [-170.796460176991, 238.053097345133],
      1e-12,
    );
  });

  test.prop([anyFlatPoint<"px">(), anyLine<"px">()])("agrees with JTS", (point, across) => {
    const [x, y] = across.through;
    const [farX, farY] = pointOnLine(across, px(1000));
    const image = AffineTransformation.reflectionInstance(x, y, farX, farY).transform(
      new Coordinate(point[0], point[1]),
      new Coordinate(0, 0),
    );
    expectClose(reflectAcross(point, across), [image.x, image.y], 1e-8);
  });

  test.prop([fc.oneof(anyFlatPoint<"px">(), anyDeepPoint<"px">()), anyLine<"px">()])(
    "twice is the identity to 1e-9 at 4000 px, and keeps depth",
    (point, across) => {
      expectClose(reflectAcross(reflectAcross(point, across), across), point, 1e-9);
      expectClose(reflectAcross(point, across)[2], point[2], 0);
    },
  );

  test.prop([anyFlatPoint<"px">(), anyFlatPoint<"px">(), anyLine<"px">()])(
    "keeps distances, and changes the side",
    (one, other, across) => {
      const images = [reflectAcross(one, across), reflectAcross(other, across)] as const;
      expectClose(distance(...images), distance(one, other), 1e-9);
      expectClose(distanceFromLine(images[0], across), -distanceFromLine(one, across), 1e-9);
    },
  );
});
