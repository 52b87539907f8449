import { STATIONS } from "../../proportions/internal.js";
import { GeometryError, type Note } from "../../units/index.js";
import { keysOf, SIDES } from "../../units/internal.js";
import { planAcross } from "../dots/plan-dots.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { type ShapeFinding, shapeFindings } from "../shape/shape-findings.js";
import { whyNot } from "../weighing/why-not.js";
import { beyondGuides } from "./beyond-guides.js";
import { type WishLimitCode, wishNote } from "./notes.js";
import { isFor, ruleOf, type Wish } from "./wish.js";
import { type Before, type WishAmount, wishedChoices } from "./wished-choices.js";

/** No wish makes a brow thinner than this, in mm; ours. */
const LEAST_THICKNESS = 2;

/** What amounts come up against: an outline that cannot be, a shape to look at twice, guides. */
export function obstacleOf(
  amounts: readonly WishAmount[],
  before: Before,
): Note<WishLimitCode> | undefined {
  let plan: PlannedDots;
  try {
    plan = planAcross(0, before.read, wishedChoices(before, amounts));
  } catch (error) {
    if (error instanceof GeometryError) return whyNot(error);
    throw error;
  }
  const { shapeLimits } = before;
  const known = shapeFindings(before.plan, shapeLimits);
  const worse = shapeFindings(plan, shapeLimits).find((found) =>
    known.every((one) => !isSame(one, found) || valueOf(found) > valueOf(one) + ROUNDING),
  );
  if (worse !== undefined) return { code: worse.code, values: worse.values };
  return tooThin(plan, before.plan) ?? beyondGuides(plan, before.plan);
}

/** A pinned dot that a wish would move. */
export function atPin(wish: Wish, { choices }: Before): Note<WishLimitCode> | undefined {
  const { dots } = ruleOf(wish);
  const pin = choices.pins?.find(
    (one) => isFor(wish, one.side) && dots.some((dot) => dot === one.dot),
  );
  return pin && wishNote("wish-at-pin", { side: pin.side, dot: pin.dot });
}

/** A station that a wish made thinner than brows are drawn. */
function tooThin(plan: PlannedDots, before: PlannedDots): Note<WishLimitCode> | undefined {
  for (const side of SIDES) {
    for (const station of keysOf(STATIONS)) {
      const { upper, lower } = STATIONS[station];
      const thickness = ({ dots }: PlannedDots): number =>
        dots[side][upper][1] - dots[side][lower][1];
      const [now, was] = [thickness(plan), thickness(before)];
      if (now >= Math.min(was, LEAST_THICKNESS) - ROUNDING) continue;
      return wishNote("wish-thin", { side, station, limit: LEAST_THICKNESS });
    }
  }
  return undefined;
}

/** Whether two findings are of the same in the same place. */
function isSame(one: ShapeFinding, other: ShapeFinding): boolean {
  const names = ["side", "dot", "station"];
  return one.code === other.code && names.every((name) => one.values[name] === other.values[name]);
}

function valueOf({ values }: ShapeFinding): number {
  return Number(values["value"]);
}

/** What adding and subtracting coordinates may cost, in mm and degrees. */
const ROUNDING = 1e-9;
