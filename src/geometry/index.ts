export { areaBetween } from "./polylines/area-between.js";
export { type CircleFit, fitCircle } from "./fits/circle-fit.js";
export {
  densify,
  pointAlong,
  polygonArea,
  polylineLength,
  type PolylinePlace,
} from "./polylines/polyline.js";
export type { Cubic } from "./curves/cubic.js";
export { distance, spaceDistance } from "./lines/distance.js";
export { type EllipseFit, fitEllipse } from "./fits/ellipse-fit.js";
export { intersectPolyline } from "./polylines/intersect-polyline.js";
export {
  type Direction,
  distanceAlongLine,
  distanceFromLine,
  intersect,
  type Line,
  lineAlong,
  type LineMeeting,
  lineThrough,
  pointOnLine,
  reflectAcross,
} from "./lines/line.js";
export { midpoint } from "./lines/midpoint.js";
export { bestMirrorLine, type MirrorLine } from "./fits/mirror-line.js";
export { pathData } from "./curves/path-data.js";
export { distanceFromPlane, footOnPlane, type Plane } from "./lines/plane.js";
export { bestMirrorPlane, type MirrorPlane } from "./fits/mirror-plane.js";
export type { DeepMirrorPair, MirrorPair } from "./fits/labelled-pair.js";
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
