import { type Face, requirePlannable } from "brow-geometry";
import { eachSide, flatPoint, type Polyline } from "brow-geometry/units";
import {
  type Borders,
  type Gauge,
  NONE_BARE,
  type Picture,
  type Shot,
} from "../appointment/basis.js";

/** A face that was found, with the borders of its brows as a first guess. */
export function shotOf(found: Face<"px">, gauge: Gauge, picture?: Picture): Shot {
  const face = requirePlannable(found);
  const hair = eachSide((side): Borders => {
    const { upper, lower = upper } = face[side].brow;
    return { upper: flat(upper), lower: flat(lower) };
  });
  const traced = { right: false, left: false };
  return {
    kind: "photo",
    ...(picture && { picture }),
    found,
    hair,
    traced,
    bare: NONE_BARE,
    gauge,
  };
}

/** What a finger moves lies on the picture: it has no depth of its own. */
function flat(line: Polyline<"px">): Polyline<"px"> {
  return line.map(([x, y]) => flatPoint(x, y));
}
