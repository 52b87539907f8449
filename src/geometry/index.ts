export { areaBetween } from "./polylines/area-between.js";
export { type CircleFit, fitCircle } from "./fits/circle-fit.js";
export { densify } from "./polylines/densify.js";
export {
  type Cubic,
  cubicsOf,
  mapPath,
  pointOnCubic,
  reversePath,
  straightCubic,
} from "./curves/cubic.js";
export { distance, spaceDistance } from "./lines/distance.js";
export { flatten } from "./curves/flatten.js";
export { type EllipseFit, fitEllipse } from "./fits/ellipse-fit.js";
export { graphOf } from "./curves/graph-of.js";
export { heightOver } from "./lines/height-over.js";
export {
  type HermiteCurve,
  type HermiteKnot,
  hermiteAt,
  hermiteDifference,
  hermiteKnotAt,
} from "./curves/hermite.js";
export { hermiteZeros } from "./curves/hermite-zeros.js";
export { integrate } from "./curves/integrate.js";
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
export { mapPathWithin } from "./curves/map-path-within.js";
export { midpoint } from "./lines/midpoint.js";
export {
  bestMirrorLine,
  type MirrorLine,
  mirrorLineOf,
  type MirrorPair,
} from "./fits/mirror-line.js";
export { pathArea } from "./curves/path-area.js";
export { pathData } from "./curves/path-data.js";
export { pathLength } from "./curves/path-length.js";
export { pathOverlap } from "./curves/path-overlap.js";
export { pchip } from "./curves/pchip.js";
export { distanceFromPlane, footOnPlane, type Plane } from "./lines/plane.js";
export { polygonArea } from "./polylines/polygon-area.js";
export { bestMirrorPlane, type MirrorPlane } from "./fits/mirror-plane.js";
export type { DeepMirrorPair } from "./fits/robust-plane.js";
export { type PolylinePlace, pointAlong, polylineLength } from "./polylines/polyline.js";
export {
  type Derivative,
  fitPolynomial,
  polynomialAt,
  type PolynomialFit,
  polynomialWeights,
} from "./fits/polynomial-fit.js";
export { highestPeak } from "./fits/polynomial-peak.js";
export { reflectAcross } from "./lines/reflect-across.js";
export { fitRobustly, type RobustFit } from "./fits/robust-fit.js";
export { rootBetween } from "./curves/root-between.js";
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
export { lengthAlongSurface, liftOnto, type Surface } from "./curves/surface.js";
export type { SpaceVector } from "./lines/space-vector.js";
export { type EigenPair, eigenPairs, type SymmetricMatrix } from "./fits/symmetric-matrix.js";
export { fitLine, type LineFit } from "./fits/total-least-squares.js";
