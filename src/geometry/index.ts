export { distance, spaceDistance } from "./distance.js";
export { heightOver } from "./height-over.js";
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
export { midpoint } from "./midpoint.js";
export { bestMirrorLine, type MirrorLine, mirrorLineOf, type MirrorUnit } from "./mirror-line.js";
export { polygonArea } from "./polygon-area.js";
export { bestMirrorPlane, type DeepMirrorUnit, type MirrorPlane } from "./mirror-plane.js";
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
  fitSimilarity,
  type Similarity,
  type SimilarityFit,
  type SimilarityOptions,
  transform,
} from "./similarity.js";
export { lengthAlongSurface, liftOnto, type Surface } from "./surface.js";
export type { SpaceVector } from "./space-vector.js";
export { type EigenPair, eigenPairs, type SymmetricMatrix } from "./symmetric-matrix.js";
