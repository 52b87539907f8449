import type { Polyline } from "brow-geometry";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import type Geometry from "jsts/org/locationtech/jts/geom/Geometry.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import IsValidOp from "jsts/org/locationtech/jts/operation/valid/IsValidOp.js";

/** A polygon as JSTS has it, closed from its last point to its first. */
export function polygonOfJsts(polygon: Polyline<"mm">): Geometry {
  const ring = [...polygon, ...polygon.slice(0, 1)].map(([x, y]) => new Coordinate(x, y));
  return new GeometryFactory().createPolygon(ring);
}

/** Whether a polygon neither crosses nor touches itself. */
export function isSimplePolygon(polygon: Polyline<"mm">): boolean {
  return IsValidOp.isValid(polygonOfJsts(polygon));
}
