export { areaBetween } from "./polylines/area-between.js";
export { type CircleFit, fitCircle } from "./fits/circle-fit.js";
export { densify } from "./polylines/densify.js";
export type { Cubic } from "./curves/cubic.js";
export { distance, spaceDistance } from "./lines/distance.js";
export { type EllipseFit, fitEllipse } from "./fits/ellipse-fit.js";
export { intersectPolyline } from "./polylines/intersect-polyline.js";
export { intersect, type LineMeeting } from "./lines/intersect.js";
export {
  type Direction,
  distanceAlongLine,
  distanceFromLine,
  type Line,
  lineAlong,
  lineThrough,
  pointOnLine,
} from "./lines/line.js";
export { midpoint } from "./lines/midpoint.js";
export { bestMirrorLine, type MirrorLine, type MirrorPair } from "./fits/mirror-line.js";
export { pathData } from "./curves/path-data.js";
export { distanceFromPlane, footOnPlane, type Plane } from "./lines/plane.js";
export { polygonArea } from "./polylines/polygon-area.js";
export { bestMirrorPlane, type MirrorPlane } from "./fits/mirror-plane.js";
export type { DeepMirrorPair } from "./fits/robust-plane.js";
export { pointAlong, polylineLength, type PolylinePlace } from "./polylines/polyline.js";
export { reflectAcross } from "./lines/reflect-across.js";
export { fitRobustly, type RobustFit } from "./fits/robust-fit.js";
export {
  distanceFromPolyline,
  type Separation,
  separation,
  type SeparationOptions,
} from "./polylines/separation.js";
export { sharedArea } from "./polylines/shared-area.js";
export {
  fitSimilarity,
  type Similarity,
  type SimilarityFit,
  type SimilarityOptions,
  transform,
} from "./fits/similarity.js";
export type { SpaceVector } from "./lines/space-vector.js";
export type { SymmetricMatrix } from "./fits/symmetric-matrix.js";
export { fitLine, type LineFit } from "./fits/total-least-squares.js";
