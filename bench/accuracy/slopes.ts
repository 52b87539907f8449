import {
  type BrowPlan,
  type Choices,
  ENGLISH,
  faceFrame,
  type MeasureName,
  mm,
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
  { name: "by hand", faces: 20, planOf: (face: LondonFace) => byHand(face) },
  { name: "mesh", faces: 20, planOf: (face: LondonFace) => byMesh(face, false) },
  { name: "mesh, turned to front", faces: 10, planOf: (face: LondonFace) => byMesh(face, true) },
] as const;

/** What scatters by less than this is held by the plan, in mm. */
const HELD = 1e-2;

/** The uncertainties that plans state, by slopes, over how far readings scatter when everything errs. */
export function slopeTable(seed: number, draws: number): string {
  const faces = londonFaces();
  let next = 0;
  const columns = WAYS.map(({ name, faces: count, planOf }) => {
    const ratios = new Map<string, number[]>();
    for (const face of faces.slice(next, next + count)) {
      const deviations = deviationsFrom(seed + next);
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

/** How far evening may take a dot from its hair, in mm, and on how many faces that is held against draws. */
const LEVEL_LIMIT = mm(1);
const LIMITED_FACES = 10;

/** The same of what sides differ in where `levelLimit` keeps dots near their hair. */
export function limitTable(seed: number, draws: number): string {
  const plans = londonFaces()
    .map((face) => byHand(face, { levelLimit: LEVEL_LIMIT }))
    .filter(isHeld)
    .slice(0, LIMITED_FACES);
  const ratios = new Map<string, number[]>();
  plans.forEach((plan, index) => {
    const deviations = deviationsFrom(seed + index);
    for (const [reading, ratio] of differenceRatios(plan, deviations, draws)) {
      ratios.set(reading, [...(ratios.get(reading) ?? []), ratio]);
    }
    console.error(`levelLimit: face ${index + 1}`);
  });
  const rows = MEASURE_NAMES.map((name) => [
    ENGLISH.terms.measures[name],
    ...["natural", "planned"].map((map) => cell(ratios.get(`${map} ${name}`) ?? [])),
  ]);
  return [
    `${draws} draws of every error for each of ${plans.length} faces drawn by hand, the first on which a limit of ${LEVEL_LIMIT} mm leaves heights uneven. Stated standard uncertainty of a difference, left less right, over the standard deviation of the draws: the median, and in brackets the one farthest from 1; "held" where the plan leaves nothing to scatter.`,
    table(["difference", "natural", "planned"], rows),
  ].join("\n\n");
}

function isHeld({ reasons }: BrowPlan): boolean {
  return reasons.some(({ code }) => code === "levels-left");
}

/** Differences, left less right: of the natural brows, then of the planned ones. */
function differenceRatios(
  plan: BrowPlan,
  deviations: Deviations,
  draws: number,
): readonly (readonly [string, number])[] {
  const { errors, readAt } = erringPlan(plan, UPRIGHT_U);
  const count = MEASURE_NAMES.length;
  const read = (amounts: readonly number[]): readonly number[] => {
    const row = readAt(amounts);
    return [0, 2 * count].flatMap((map) =>
      MEASURE_NAMES.map(
        (_, index) => (row[map + count + index] as number) - (row[map + index] as number),
      ),
    );
  };
  const scatter = scatterOf(read, errors, deviations, draws);
  const maps = { natural: plan.naturalComparison, planned: plan.comparison };
  return (["natural", "planned"] as const).flatMap((map, at) =>
    MEASURE_NAMES.flatMap((measure, index) => {
      const found = maps[map].differences.find((one) => one.measure === measure)?.difference;
      const by = scatter[at * count + index] as number;
      return found !== undefined && by > leastOf(measure)
        ? [[`${map} ${measure}`, found.u / by] as const]
        : [];
    }),
  );
}

/** Standard deviations of what is read where everything errs. */
function scatterOf(
  readAt: (amounts: readonly number[]) => readonly number[],
  errors: number,
  deviations: Deviations,
  draws: number,
): readonly number[] {
  const sums: { count: number; mean: number; squares: number }[] = [];
  for (let draw = 0; draw < draws; draw += 1) {
    readAt(Array.from({ length: errors }, deviations.normal)).forEach((value, index) => {
      const sum = (sums[index] ??= { count: 0, mean: 0, squares: 0 });
      if (Number.isNaN(value)) return;
      sum.count += 1;
      const from = value - sum.mean;
      sum.mean += from / sum.count;
      sum.squares += from * (value - sum.mean);
    });
  }
  return sums.map(({ count, squares }) => Math.sqrt(squares / (count - 1)));
}

function leastOf(measure: MeasureName): number {
  return measure === "frontShare" ? HELD / 10 : HELD;
}

/** Names of readings, without sides, and how many times as large the stated uncertainty is as the scatter. */
function ratiosOf(
  plan: BrowPlan,
  deviations: Deviations,
  draws: number,
): readonly (readonly [string, number])[] {
  const { errors, names, readAt } = erringPlan(plan, UPRIGHT_U);
  const scatters = scatterOf(readAt, errors, deviations, draws);
  const stated = statedU(plan);
  return names.flatMap((name, index) => {
    const scatter = scatters[index] as number;
    const [map, , measure] = name.split(" ") as [string, string, MeasureName];
    return scatter > leastOf(measure)
      ? [[`${map} ${measure}`, (stated[index] ?? Number.NaN) / scatter] as const]
      : [];
  });
}

function byHand({ hand, millimetres }: LondonFace, choices: Choices = {}): BrowPlan {
  const photo = requirePlannable(hand);
  const u = 0.01 * millimetres;
  const scale: Scale = { from: "px", to: "mm", factor: millimetres, u, source: "given", notes: [] };
  return planOnPhoto(photo, { ...faceFrame(photo, scale), pitchU: UPRIGHT_U }, choices);
}

function byMesh(face: LondonFace, turned: boolean): BrowPlan {
  const photo = requirePlannable(foundFace(face, "mesh-478"));
  const scale = scaleFromIris(photo);
  const frame = turned ? turnToFront(photo, scale) : faceFrame(photo, scale);
  return planOnPhoto(photo, { ...frame, pitchU: UPRIGHT_U });
}
