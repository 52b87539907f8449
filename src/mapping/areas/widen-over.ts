import { outline, outlineBorders } from "../../proportions/index.js";
import { heightOver } from "../../geometry/internal.js";
import { length, type Length, type Note, type Side } from "../../units/index.js";
import { keysOf, refusingAs, requireWithin } from "../../units/internal.js";
import { placeOnSide } from "../../symmetry/index.js";
import type { Choices } from "../choices/choices.js";
import { planDots } from "../dots/plan-dots.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { type GrantedWish, grantWishes, type WishOptions } from "../wishes/grant-wishes.js";
import type { Wish } from "../wishes/wish.js";
import { alongEdge, checkAreas } from "./check-areas.js";
import { type AreaCode, areaNote } from "./notes.js";
import type { AreaCheck, SkinArea } from "./skin-area.js";

/** Options of {@link widenOver}. */
export interface WidenOptions extends WishOptions {
  /** How much wider the artist lets either brow become in any direction, 0…10 mm. */
  readonly most: Length<"mm">;
  /** Whose allowance it is: kept with the pins that it makes. */
  readonly by?: string;
}

/** A plan made wider over areas to be covered, as choices. */
export interface WidenedChoices {
  /** The choices that were given, and pins for every dot that moves; those given where nothing had to. */
  readonly choices: Choices;
  /** What was wished for both brows, and what was granted of it. */
  readonly grants: readonly GrantedWish[];
  /** What the plan of these choices does to every area. */
  readonly checks: readonly AreaCheck[];
  /** Which areas to stay off keep the brows from becoming as wide as would cover the others. */
  readonly heldBy: readonly Note<AreaCode>[];
}

/**
 * Makes both brows wider, by as little as covers what is to be covered, and by no more than the artist allows: up and
 * down, at the start and at the tail. They stay even. Guides, hair, the space over the lid and the limits of a brow's
 * shape hold it back as they hold back any wish (`grantWishes`), and so does an area to stay off that would be
 * overlapped more: `heldBy` says which. What still sticks out is said in `checks`: whether it
 * can be removed is for licensed practice to judge.
 *
 * @throws GeometryError as `checkAreas`, `grantWishes` and `planDots`; `out-of-range` for a limit outside of 0…10 mm
 *
 * @example
 * ```ts
 * import { mm, planDots, type PlannableFace, say } from "brow-geometry";
 * import { widenOver } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 17, 20], [sign * 38, 27], [sign * 57, 18]]) },
 * });
 * const face: PlannableFace = { right: side(-1), left: side(1), midline: {} };
 * // Old pigment below the left brow.
 * const edge = mm([[24, 15], [34, 19], [34, 22], [24, 20]]);
 * const areas = [{ name: "old pigment", aim: "cover", edge }] as const;
 * const { grants, checks } = widenOver(face, areas, {}, { most: mm(2) });
 * grants.map(({ wish }) => wish.wish); // → ["fuller"]
 * checks.map(({ note }) => say(note)); // → ["old pigment: covered, its margin included."]
 * ```
 */
export function widenOver(
  face: PlannableFace,
  areas: readonly SkinArea[],
  choices: Choices,
  { most, by, ...options }: WidenOptions,
): WidenedChoices {
  return refusingAs("widenOver", () => {
    requireWithin("options.most", most, 0, MOST);
    const widened = (needed: Needed): Widened => {
      const granted = grantWishes(face, wishesFor(needed, by), choices, options);
      const plan = planDots(face, granted.choices);
      return { ...granted, plan, checks: checkAreas(plan, areas), heldBy: [] };
    };
    const before = widened(NOTHING);
    let needed = NOTHING;
    let found = before;
    for (let round = 0; round < ROUNDS; round += 1) {
      const more = neededFor(found.plan, found.checks);
      if (keysOf(more).every((way) => more[way] === 0 || needed[way] >= most)) break;
      needed = combined(needed, more, (one, other) => Math.min(most, one + other));
      found = widened(needed);
    }
    const heldBy = namesOverlapped(found, before).map((name) =>
      areaNote("area-in-the-way", { name }),
    );
    for (let part = PARTS - 1; namesOverlapped(found, before).length > 0; part -= 1) {
      found = widened(combined(needed, NOTHING, (one) => (one * part) / PARTS));
    }
    const { choices: settled, grants, checks } = found;
    return { choices: settled, grants, checks, heldBy };
  });
}

interface Widened extends WidenedChoices {
  readonly plan: PlannedDots;
}

/** Which areas to stay off are overlapped more than before. */
function namesOverlapped(now: WidenedChoices, before: WidenedChoices): readonly string[] {
  const more = now.checks.filter(
    ({ area, beyond }, index) =>
      area.aim === "stay-off" && beyond > (before.checks[index]?.beyond ?? 0) + FINE,
  );
  return [...new Set(more.map(({ area }) => area.name))];
}

/** Where an area to stay off is in the way, brows become wider by so many parts fewer. */
const PARTS = 10;

/** More than that would be another brow; ours, in mm. */
const MOST = 10;

/** A brow that moved at one end runs otherwise in between: so often it is looked at again. */
const ROUNDS = 8;

/** How much wider brows have to be, and which way. */
type Needed = Readonly<Record<"up" | "down" | "inward" | "outward", number>>;

const NOTHING: Needed = { up: 0, down: 0, inward: 0, outward: 0 };

function combined(one: Needed, other: Needed, of: (one: number, other: number) => number): Needed {
  const way = (name: keyof Needed): number => of(one[name], other[name]);
  return { up: way("up"), down: way("down"), inward: way("inward"), outward: way("outward") };
}

/** What of the areas to be covered lies beyond which border, on either side. */
function neededFor({ dots, choices }: PlannedDots, checks: readonly AreaCheck[]): Needed {
  const needed = { ...NOTHING };
  const ask = (way: keyof Needed, by: number): void => {
    // In tenths of a millimetre, as pencils draw.
    if (by > FINE) needed[way] = Math.max(needed[way], Math.ceil(10 * by - FINE) / 10);
  };
  for (const { area, side, beyond } of checks) {
    if (area.aim !== "cover" || beyond === 0) continue;
    const { margin = 0 } = area;
    const { upper, lower } = outlineBorders(outline(dots[side], choices.shape), STRAYS);
    const [start, end] = [startOf(dots, side), placeOnSide(dots[side].tailEnd, side).distance];
    for (const [x, y] of alongEdge(area.edge)) {
      const at = Math.abs(x);
      const [top, bottom] = [
        heightOver(length<"mm">(x), upper),
        heightOver(length<"mm">(x), lower),
      ];
      if (top === undefined || bottom === undefined) {
        ask("inward", start - at + margin);
        ask("outward", at - end + margin);
        continue;
      }
      ask("up", y - top + margin);
      ask("down", bottom - y + margin);
      ask("inward", margin - (at - start));
      ask("outward", margin - (end - at));
    }
  }
  return needed;
}

const STRAYS = length(0.002);
const FINE = 0.005;

function startOf(dots: PlannedDots["dots"], side: Side): number {
  return placeOnSide(dots[side].upperStart, side).distance;
}

/** Wishes for both brows: one that reaches up is lifted, and fuller by as much. */
function wishesFor({ up, down, inward, outward }: Needed, by: string | undefined): readonly Wish[] {
  const amounts = { lift: up, fuller: up + down, closer: inward, lengthen: outward } as const;
  return keysOf(amounts)
    .filter((wish) => amounts[wish] > 0)
    .map((wish) => ({ wish, amount: length(amounts[wish]), ...(by === undefined ? {} : { by }) }));
}
