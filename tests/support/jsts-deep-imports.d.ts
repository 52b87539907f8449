// jsts publishes types for its namespace only; these are the parts that tests import one by one.

declare module "jsts/org/locationtech/jts/geom/Coordinate.js" {
  export default class Coordinate {
    constructor(x: number, y: number);
    x: number;
    y: number;
  }
}

declare module "jsts/org/locationtech/jts/geom/Geometry.js" {
  export default abstract class Geometry {
    getArea(): number;
  }
}

declare module "jsts/org/locationtech/jts/geom/GeometryFactory.js" {
  import type Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
  import type Geometry from "jsts/org/locationtech/jts/geom/Geometry.js";
  export default class GeometryFactory {
    createLineString(coordinates: readonly Coordinate[]): Geometry;
    createPolygon(coordinates: readonly Coordinate[]): Geometry;
  }
}

declare module "jsts/org/locationtech/jts/geom/util/AffineTransformation.js" {
  import type Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
  export default class AffineTransformation {
    static reflectionInstance(x0: number, y0: number, x1: number, y1: number): AffineTransformation;
    transform(from: Coordinate, to: Coordinate): Coordinate;
  }
}

declare module "jsts/org/locationtech/jts/algorithm/distance/DiscreteHausdorffDistance.js" {
  import type Geometry from "jsts/org/locationtech/jts/geom/Geometry.js";
  export default class DiscreteHausdorffDistance {
    static distance(one: Geometry, other: Geometry): number;
    static distance(one: Geometry, other: Geometry, densifyFraction: number): number;
  }
}

declare module "jsts/org/locationtech/jts/algorithm/Intersection.js" {
  import type Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
  export default class Intersection {
    static intersection(
      from: Coordinate,
      to: Coordinate,
      otherFrom: Coordinate,
      otherTo: Coordinate,
    ): Coordinate;
  }
}

declare module "jsts/org/locationtech/jts/operation/overlay/OverlayOp.js" {
  import type Geometry from "jsts/org/locationtech/jts/geom/Geometry.js";
  export default class OverlayOp {
    static symDifference(one: Geometry, other: Geometry): Geometry;
    static intersection(one: Geometry, other: Geometry): Geometry;
    static union(one: Geometry, other: Geometry): Geometry;
  }
}

declare module "jsts/org/locationtech/jts/operation/valid/IsValidOp.js" {
  import type Geometry from "jsts/org/locationtech/jts/geom/Geometry.js";
  export default class IsValidOp {
    static isValid(geometry: Geometry): boolean;
  }
}

declare module "jsts/org/locationtech/jts/operation/buffer/BufferOp.js" {
  import type Geometry from "jsts/org/locationtech/jts/geom/Geometry.js";
  export default class BufferOp {
    static bufferOp(geometry: Geometry, distance: number, quadrantSegments: number): Geometry;
  }
}
