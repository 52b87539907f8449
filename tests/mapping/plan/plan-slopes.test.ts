import {
  type BrowPlan,
  type Choices,
  faceFrame,
  planOnPhoto,
  requirePlannable,
  type Scale,
  scaleFromIris,
  turnToFront,
} from "brow-geometry";
import { describe, expect, it } from "vitest";
import { erringPlan, statedU } from "../../support/erring-plan.js";
import { foundFace, type LondonFace, londonFaces } from "../../support/london-faces.js";

const PITCH_U = 5;

/** What the mean slopes over ± one standard deviation of every error give, all of it read anew. */
function byCentralDifferences(plan: BrowPlan): ReadonlyMap<string, number> {
  const { errors, names, readAt } = erringPlan(plan, PITCH_U);
  const squares = names.map(() => 0);
  for (let error = 0; error < errors; error += 1) {
    const only = (amount: number): readonly number[] =>
      readAt(Array.from({ length: errors }, (_, index) => (index === error ? amount : 0)));
    const [above, below] = [only(1), only(-1)];
    names.forEach((_, index) => {
      const half = ((above[index] as number) - (below[index] as number)) / 2;
      squares[index] = (squares[index] as number) + half ** 2;
    });
  }
  return new Map(names.map((name, index) => [name, Math.sqrt(squares[index] as number)]));
}

/** Stated over seen, for what scatters at all: what a plan holds by construction is left out. */
function ratios(plan: BrowPlan): readonly (readonly [string, number])[] {
  const seen = byCentralDifferences(plan);
  const stated = statedU(plan);
  return Array.from(seen, ([name, u], index) => [name, (stated[index] as number) / u, u] as const)
    .filter(([name, , u]) => u > (name.endsWith("frontShare") ? 0.005 : 0.01))
    .map(([name, ratio]) => [name, ratio]);
}

/** A fitted skin follows the brow's own points, and a plan holds it still: lengths on it. */
const ON_FITTED_SKIN =
  /^(natural|planned) \w+ (front|tail|frontAlong|tailAlong|exo\w+)$|^natural \w+ frontShare$/;

/** Held as the mean of both brows: what is left of each is how its own skin is fitted. */
const SHARE_OF_EACH = /^planned \w+ frontShare$/;

describe("the slopes of a plan, against a plan made anew with every error put on the photo", () => {
  const faces = londonFaces();
  const onMesh = (face: LondonFace, turned: boolean): BrowPlan => {
    const photo = requirePlannable(foundFace(face, "mesh-478"));
    const scale = scaleFromIris(photo);
    const frame = turned ? turnToFront(photo, scale) : faceFrame(photo, scale);
    return planOnPhoto(photo, { ...frame, pitchU: PITCH_U });
  };

  it.each<[number, Choices]>([
    [7, {}],
    // Its own arch lies at the limit beyond which it is moved: there are two slopes.
    [20, { arch: "exocanthion-vertical" }],
  ])("agree within 2 % on face %i drawn by hand", (index, choices) => {
    const { hand, millimetres } = faces[index] as LondonFace;
    const photo = requirePlannable(hand);
    const u = 0.01 * millimetres;
    const scale: Scale = {
      from: "px",
      to: "mm",
      factor: millimetres,
      u,
      source: "given",
      notes: [],
    };
    const plan = planOnPhoto(photo, { ...faceFrame(photo, scale), pitchU: PITCH_U }, choices);
    for (const [name, ratio] of ratios(plan)) {
      expect(Math.abs(ratio - 1), `${name}: ${ratio}`).toBeLessThan(0.02);
    }
  });

  it.each([
    [7, false],
    [20, true],
  ])(
    "agree within 5 % on face %i of the mesh, lengths on its skin within 15 %",
    (index, turned) => {
      for (const [name, ratio] of ratios(onMesh(faces[index] as LondonFace, turned))) {
        if (SHARE_OF_EACH.test(name)) continue;
        const most = ON_FITTED_SKIN.test(name) ? 0.15 : 0.05;
        expect(Math.abs(ratio - 1), `${name}: ${ratio}`).toBeLessThan(most);
      }
    },
  );
});
