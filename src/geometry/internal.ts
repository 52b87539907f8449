export {
  cubicsOf,
  graphOf,
  mapPath,
  pointOnCubic,
  reversePath,
  straightCubic,
} from "./curves/cubic.js";
export { flatten } from "./curves/flatten.js";
export { heightOver } from "./lines/height-over.js";
export {
  hermiteAt,
  type HermiteCurve,
  hermiteDifference,
  type HermiteKnot,
  hermiteKnotAt,
  hermiteZeros,
} from "./curves/hermite.js";
export { integrate } from "./curves/integrate.js";
export { mapPathWithin } from "./curves/map-path-within.js";
export { mirrorLineOf } from "./fits/mirror-line.js";
export { pathArea } from "./curves/path-area.js";
export { pathLength } from "./curves/path-length.js";
export { pathOverlap } from "./curves/path-overlap.js";
export { pchip } from "./curves/pchip.js";
export {
  type Derivative,
  fitPolynomial,
  highestPeak,
  polynomialAt,
  type PolynomialFit,
  polynomialWeights,
} from "./fits/polynomial-fit.js";
export { rootBetween } from "./curves/root-between.js";
export { lengthAlongSurface, liftOnto, type Surface } from "./curves/surface.js";
export { type EigenPair, eigenPairs } from "./fits/symmetric-matrix.js";
