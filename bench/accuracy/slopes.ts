import {
  type BrowPlan,
  ENGLISH,
  faceFrame,
  type MeasureName,
  planOnPhoto,
  requirePlannable,
  type Scale,
  scaleFromIris,
  turnToFront,
} from "brow-geometry";
import { MEASURE_NAMES } from "../../src/landmarks/internal.js";
import { UPRIGHT_U } from "../../src/symmetry/internal.js";
import { type Deviations, deviationsFrom } from "../../src/units/uncertainty/random.js";
import { erringPlan, statedU } from "../../tests/support/erring-plan.js";
import { foundFace, type LondonFace, londonFaces } from "../../tests/support/london-faces.js";
import { table } from "./page.js";

/** How faces are taken, and how many of the fifty so. */
const WAYS = [
  { name: "by hand", faces: 20, planOf: byHand },
  { name: "mesh", faces: 20, planOf: (face: LondonFace) => byMesh(face, false) },
  { name: "mesh, turned to front", faces: 10, planOf: (face: LondonFace) => byMesh(face, true) },
] as const;

/** What scatters by less than this is held by the plan. */
const HELD = 1e-2;

/** The uncertainties that plans state, by slopes, over how far readings scatter when everything errs. */
export function slopeTable(seed: number, draws: number): string {
  const faces = londonFaces();
  let next = 0;
  const columns = WAYS.map(({ name, faces: count, planOf }) => {
    const ratios = new Map<string, number[]>();
    for (const face of faces.slice(next, next + count)) {
      const deviations = deviationsFrom("study", seed + next);
      for (const [reading, ratio] of ratiosOf(planOf(face), deviations, draws)) {
        ratios.set(reading, [...(ratios.get(reading) ?? []), ratio]);
      }
      console.error(`${name}: face ${++next}`);
    }
    return ratios;
  });
  const rows = ["natural", "planned"].flatMap((map) =>
    MEASURE_NAMES.map((name) => [
      `${ENGLISH.terms.measures[name]}, ${map}`,
      ...columns.map((ratios) => cell(ratios.get(`${map} ${name}`) ?? [])),
    ]),
  );
  return [
    `${draws} draws of every error for each of ${next} faces, both sides. Stated standard uncertainty over the standard deviation of the draws: the median, and in brackets the one farthest from 1; "held" where the plan leaves nothing to scatter.`,
    table(["reading", ...WAYS.map(({ name, faces: count }) => `${name} (${count} faces)`)], rows),
  ].join("\n\n");
}

function cell(ratios: readonly number[]): string {
  if (ratios.length === 0) return "held";
  const sorted = [...ratios].sort((one, other) => one - other);
  const far = (ratio: number): number => Math.abs(Math.log(ratio));
  const worst = sorted.reduce((most, ratio) => (far(ratio) > far(most) ? ratio : most));
  return `${(sorted[Math.floor(sorted.length / 2)] ?? 0).toFixed(2)} (${worst.toFixed(2)})`;
}

/** Names of readings, without sides, and how many times as large the stated uncertainty is as the scatter. */
function ratiosOf(
  plan: BrowPlan,
  deviations: Deviations,
  draws: number,
): readonly (readonly [string, number])[] {
  const { errors, names, readAt } = erringPlan(plan, UPRIGHT_U);
  const sums = names.map(() => ({ count: 0, mean: 0, squares: 0 }));
  for (let draw = 0; draw < draws; draw += 1) {
    readAt(Array.from({ length: errors }, deviations.normal)).forEach((value, index) => {
      const sum = sums[index];
      if (sum === undefined || Number.isNaN(value)) return;
      sum.count += 1;
      const from = value - sum.mean;
      sum.mean += from / sum.count;
      sum.squares += from * (value - sum.mean);
    });
  }
  const stated = statedU(plan);
  return names.flatMap((name, index) => {
    const { count, squares } = sums[index] as (typeof sums)[number];
    const scatter = Math.sqrt(squares / (count - 1));
    const [map, , measure] = name.split(" ") as [string, string, MeasureName];
    const least = measure === "frontShare" ? HELD / 10 : HELD;
    return scatter > least
      ? [[`${map} ${measure}`, (stated[index] ?? Number.NaN) / scatter] as const]
      : [];
  });
}

function byHand({ hand, millimetres }: LondonFace): BrowPlan {
  const photo = requirePlannable(hand);
  const u = 0.01 * millimetres;
  const scale: Scale = { from: "px", to: "mm", factor: millimetres, u, source: "given", notes: [] };
  return planOnPhoto(photo, { ...faceFrame(photo, scale), pitchU: UPRIGHT_U });
}

function byMesh(face: LondonFace, turned: boolean): BrowPlan {
  const photo = requirePlannable(foundFace(face, "mesh-478"));
  const scale = scaleFromIris(photo);
  const frame = turned ? turnToFront(photo, scale) : faceFrame(photo, scale);
  return planOnPhoto(photo, { ...frame, pitchU: UPRIGHT_U });
}
