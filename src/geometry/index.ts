export { areaBetween } from "./area-between.js";
export { type CircleFit, fitCircle } from "./circle-fit.js";
export { densify } from "./densify.js";
export {
  type Cubic,
  cubicsOf,
  mapPath,
  pointOnCubic,
  reversePath,
  straightCubic,
} from "./cubic.js";
export { distance, spaceDistance } from "./distance.js";
export { flatten } from "./flatten.js";
export { type EllipseFit, fitEllipse } from "./ellipse-fit.js";
export { graphOf } from "./graph-of.js";
export { heightOver } from "./height-over.js";
export {
  type HermiteCurve,
  type HermiteKnot,
  hermiteAt,
  hermiteDifference,
  hermiteKnotAt,
} from "./hermite.js";
export { hermiteZeros } from "./hermite-zeros.js";
export { integrate } from "./integrate.js";
export { intersectPolyline } from "./intersect-polyline.js";
export { intersect, type LineMeeting } from "./intersect.js";
export {
  type Direction,
  distanceAlongLine,
  distanceFromLine,
  type Line,
  lineAlong,
  lineThrough,
  pointOnLine,
} from "./line.js";
export { mapPathWithin } from "./map-path-within.js";
export { midpoint } from "./midpoint.js";
export { bestMirrorLine, type MirrorLine, mirrorLineOf, type MirrorUnit } from "./mirror-line.js";
export { pathArea } from "./path-area.js";
export { pathData } from "./path-data.js";
export { pathLength } from "./path-length.js";
export { pathOverlap } from "./path-overlap.js";
export { pchip } from "./pchip.js";
export { distanceFromPlane, footOnPlane, type Plane } from "./plane.js";
export { polygonArea } from "./polygon-area.js";
export { bestMirrorPlane, type MirrorPlane } from "./mirror-plane.js";
export type { DeepMirrorUnit } from "./mirror-plane-fit.js";
export { type PolylinePlace, pointAlong, polylineLength } from "./polyline.js";
export {
  type Derivative,
  fitPolynomial,
  polynomialAt,
  type PolynomialFit,
  polynomialWeights,
} from "./polynomial-fit.js";
export { highestPeak } from "./polynomial-peak.js";
export { reflect } from "./reflect.js";
export { fitRobustly, type RobustFit } from "./robust-fit.js";
export { rootBetween } from "./root-between.js";
export {
  distanceFromPolyline,
  type Separation,
  separation,
  type SeparationOptions,
} from "./separation.js";
export { sharedArea } from "./shared-area.js";
export {
  fitSimilarity,
  type Similarity,
  type SimilarityFit,
  type SimilarityOptions,
  transform,
} from "./similarity.js";
export { lengthAlongSurface, liftOnto, type Surface } from "./surface.js";
export type { SpaceVector } from "./space-vector.js";
export { type EigenPair, eigenPairs, type SymmetricMatrix } from "./symmetric-matrix.js";
export { fitLine, type LineFit } from "./total-least-squares.js";
