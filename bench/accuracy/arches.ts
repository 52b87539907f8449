import { readFileSync } from "node:fs";
import { type FlatPoint, mm, naturalDots, type NaturalArch, type Polyline } from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { hermiteAt, pchip } from "../../src/geometry/internal.js";
import { upperBorder } from "../../src/proportions/upper-border.js";
import type { Deviations } from "../../src/units/uncertainty/random.js";
import { table } from "./page.js";
import { SOURCES } from "./people.js";

const COUNTS = [5, 6, 7, 10, 20];
/** Every true border is a polyline of so many legs, far finer than what is drawn on it. */
const FINE = 1500;

/** An arch that is known so well is as good as a tolerance asks for, in mm; ours. */
const CERTAIN = 2;

/** How far the natural arch lies from the true one, and how often its interval holds that. */
export function archTable(deviations: Deviations, borders: number): string {
  const kinds = [
    ["outline", (): Polyline<"mm"> => outlineDrawn(deviations)],
    ["by hand", (index: number): Polyline<"mm"> => HAND[index % HAND.length] ?? []],
  ] as const;
  const rows = kinds.flatMap(([name, borderAt]) =>
    COUNTS.map((count) => {
      const none = tallyOf(deviations, borders, count, 0, borderAt);
      const drawn = SOURCES.map(({ placement }) =>
        tallyOf(deviations, borders, count, placement, borderAt),
      );
      const { bias, rms } = none;
      const cells = drawn.flatMap((one) => [one.rms, one.held, one.found, one.flat]);
      return [name, String(count), bias, rms, ...cells];
    }),
  );
  const columns = SOURCES.flatMap(({ name }) =>
    ["rms", "held", "found", "flat"].map((what) => `${name}: ${what}`),
  );
  return [
    `${borders} borders for each row; millimetres.`,
    table(["border", "points", "no error: median", "no error: rms", ...columns], rows),
  ].join("\n\n");
}

interface Tally {
  readonly bias: string;
  readonly rms: string;
  readonly held: string;
  readonly found: string;
  readonly flat: string;
}

function tallyOf(
  deviations: Deviations,
  borders: number,
  count: number,
  placement: number,
  borderAt: (index: number) => Polyline<"mm">,
): Tally {
  const errors: number[] = [];
  let [found, flat] = [0, 0];
  let held = 0;
  for (let index = 0; index < borders; index += 1) {
    const border = borderAt(index);
    const truth = farthest(border);
    const upper = pointsOn(border, count, deviations).map(([x, y]) =>
      flatPoint<"mm">(x + placement * deviations.normal(), y + placement * deviations.normal()),
    );
    const arch: NaturalArch = naturalDots({ upper }, { u: mm(placement) }).arch;
    if (arch.kind === "flat") {
      flat += 1;
      continue;
    }
    if (arch.u <= CERTAIN) found += 1;
    const error = alongChord(border, arch.at) - alongChord(border, truth);
    errors.push(error);
    if (Math.abs(error) <= 1.96 * arch.u) held += 1;
  }
  const percent = (part: number, of: number): string => `${((100 * part) / of).toFixed(0)} %`;
  const sorted = errors.slice().sort((one, other) => one - other);
  const square = errors.reduce((sum, error) => sum + error * error, 0) / errors.length;
  const bias = sorted[Math.floor(sorted.length / 2)] ?? 0;
  return {
    bias: `${bias < 0 ? "−" : "+"}${Math.abs(bias).toFixed(2)}`,
    rms: Math.sqrt(square).toFixed(2),
    held: percent(held, errors.length),
    found: percent(found, borders),
    flat: percent(flat, borders),
  };
}

/** An upper border as the library draws it, of any usual size and shape; the ranges are ours. */
function outlineDrawn(deviations: Deviations): Polyline<"mm"> {
  const between = (low: number, high: number): number =>
    (low + high) / 2 + ((high - low) * deviations.rectangular()) / Math.sqrt(12);
  const length = between(40, 54);
  const tail = between(-5, 3);
  const share = between(0.5, 0.75);
  const arch = share * tail + between(3.5, 9);
  if (arch <= Math.max(0, tail) + 0.5) return outlineDrawn(deviations);
  const chosen = deviations.rectangular() < 0;
  const dots = {
    upperStart: mm([0, 0]),
    upperArch: mm([share * length, arch]),
    tailEnd: mm([length, tail]),
  };
  const slopes = { startSlope: between(0.8, 2), tailSlope: between(0.8, 2) };
  const shape = { angularity: between(0, 0.6), ...(chosen ? slopes : {}) };
  const curve = upperBorder(dots, shape);
  return Array.from({ length: FINE + 1 }, (_, index) => {
    const x = (length * index) / FINE;
    return flatPoint<"mm">(x, hermiteAt(curve, x));
  });
}

const FIXTURE = JSON.parse(readFileSync("tests/fixtures/hand-brows.json", "utf8")) as {
  readonly upper: readonly (readonly (readonly [number, number])[])[];
};

/** Borders drawn by hand, as smooth curves through their points that run past none of them. */
const HAND: readonly Polyline<"mm">[] = FIXTURE.upper.map((points) => {
  const ways = waysOf(points.map(([x, y]) => flatPoint<"mm">(x, y)));
  const [acrossFace, upwards] = [0, 1].map((axis) =>
    pchip(points.map((point, index) => [ways[index] as number, point[axis] as number])),
  ) as [ReturnType<typeof pchip>, ReturnType<typeof pchip>];
  const end = ways[ways.length - 1] as number;
  return Array.from({ length: FINE + 1 }, (_, index) => {
    const way = (end * index) / FINE;
    return flatPoint<"mm">(hermiteAt(acrossFace, way), hermiteAt(upwards, way));
  });
});

function waysOf(border: Polyline<"mm">): readonly number[] {
  let way = 0;
  return border.map(([x, y], index) => {
    const [fromX, fromY] = border[Math.max(0, index - 1)] as FlatPoint<"mm">;
    return (way += Math.hypot(x - fromX, y - fromY));
  });
}

/** Points on a border, the inner ones up to a quarter of a leg beside equal steps. */
function pointsOn(
  border: Polyline<"mm">,
  count: number,
  deviations: Deviations,
): readonly FlatPoint<"mm">[] {
  const ways = waysOf(border);
  const end = ways[ways.length - 1] as number;
  return Array.from({ length: count }, (_, index) => {
    const inner = index > 0 && index < count - 1;
    const beside = inner ? deviations.rectangular() / (2 * Math.sqrt(12)) : 0;
    const way = (end * (index + beside)) / (count - 1);
    const at = ways.findIndex((one) => one >= way);
    const [x, y] = border[at < 0 ? border.length - 1 : at] as FlatPoint<"mm">;
    return flatPoint<"mm">(x, y);
  });
}

function chordOf(border: Polyline<"mm">): readonly [x: number, y: number] {
  const [from, to] = [border[0], border[border.length - 1]] as [FlatPoint<"mm">, FlatPoint<"mm">];
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  return [x / Math.hypot(x, y), y / Math.hypot(x, y)];
}

function alongChord(border: Polyline<"mm">, [x, y]: FlatPoint<"mm">): number {
  const [right, up] = chordOf(border);
  return x * right + y * up;
}

function farthest(border: Polyline<"mm">): FlatPoint<"mm"> {
  const [right, up] = chordOf(border);
  const heightOf = ([x, y]: FlatPoint<"mm">): number => y * right - x * up;
  return (border as readonly FlatPoint<"mm">[]).reduce((top, point) =>
    heightOf(point) > heightOf(top) ? point : top,
  );
}
