import { mm } from "../../units/index.js";
import type { IndexTable } from "./index-table.js";
import type { AlareChoice } from "./markups.js";
import { MESH_468 } from "./mesh-468.js";

/**
 * The face mesh with ten points of the irises behind it.
 *
 * Ring factor: measured by us on 102 frontal faces. The ring is 39.6 px wide where the circle drawn
 * by hand is 35.7 wide, and the ring itself 35.1 high: 39.6 / 35.7 = 1.11. Taking the ring's own
 * height for the truth gives 1.13; that difference is the uncertainty. Iris centre: 0.5 mm, ditto;
 * the rim is taken to be no worse.
 */
export const MESH_478: IndexTable<AlareChoice<"mesh-478">> = /* @__PURE__ */ withIrises();

function withIrises(): IndexTable<AlareChoice<"mesh-478">> {
  return {
    ...MESH_468,
    irises: {
      right: { centre: 468, rim: [469, 470, 471, 472] },
      left: { centre: 473, rim: [474, 475, 476, 477] },
    },
    uncertainty: {
      default: mm(1.3),
      landmarks: { pupil: mm(0.5), limbusMedial: mm(0.5), limbusLateral: mm(0.5) },
    },
    ringFactor: { value: 1.11, u: 0.02 },
  };
}
