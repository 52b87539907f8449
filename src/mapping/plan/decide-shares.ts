import type { FaceMeasures } from "../../landmarks/index.js";
import {
  type Decision,
  type DecisionOptions,
  eachSide,
  type Measured,
  type Sides,
  type ToleranceSet,
} from "../../units/index.js";
import { decideUnder } from "../../units/internal.js";

/** Whether each planned front takes the asked share; undefined where the tolerances say nothing of it. */
export function decideShares(
  measures: FaceMeasures<Measured>,
  asked: number,
  tolerances: ToleranceSet,
  options: DecisionOptions,
): Sides<Decision> | undefined {
  const { right, left } = eachSide((side) => {
    const share = measures[side].frontShare;
    return share && decideUnder(tolerances, "frontShare", share, options, asked).decision;
  });
  return right && left && { right, left };
}
