import { type FlatPoint, mm, type NaturalArch, naturalDots, type Polyline } from "brow-geometry";
import { flatPoint, measuredPoint, propagateByMonteCarlo } from "brow-geometry/units";
import type { Deviations } from "../../src/units/uncertainty/random.js";
import { syntheticFace } from "../../tests/support/synthetic-face.js";
import { table } from "./page.js";
import { drawPerson, SOURCES } from "./people.js";

const DRAWS = 200;

/** A border as a hand draws it: seven points tell more of where it peaks than a detector's five. */
const densely = syntheticFace().left.brow;

/** How often the natural arch is found, and its interval by draws holds the true one. */
export function archTable(deviations: Deviations, people: number): string {
  const rows = SOURCES.map(({ name, placement }) => {
    const seen = { peak: 0, undetermined: 0, flat: 0 };
    let held = 0;
    for (let person = 0; person < people; person += 1) {
      const border = drawPerson(deviations, densely).face.left.brow?.upper ?? [];
      const truth = placeOf(archOf(border, 0.01));
      const drawn = border.map(([x, y]) =>
        flatPoint<"mm">(x + placement * deviations.normal(), y + placement * deviations.normal()),
      );
      const arch = archOf(drawn, placement);
      seen[arch.kind] += 1;
      if (arch.kind !== "peak" || truth === undefined) continue;
      const [low, high] = intervalOf(drawn, placement, person);
      if (low <= truth && truth <= high) held += 1;
    }
    const share = (count: number): string => `${((100 * count) / people).toFixed(1)} %`;
    return [
      name,
      share(seen.peak),
      share(seen.undetermined),
      share(seen.flat),
      seen.peak === 0 ? "–" : `${((100 * held) / seen.peak).toFixed(1)} %`,
    ];
  });
  return [
    `${people} people for each source; ${DRAWS} draws for each arch that is found.`,
    table(
      ["source", "found", "undetermined", "flat", "intervals of x, by draws, that hold the truth"],
      rows,
    ),
  ].join("\n\n");
}

function archOf(upper: Polyline<"mm">, u: number): NaturalArch {
  return naturalDots({ upper }, { u: mm(u) }).arch;
}

/** Where an arch lies across the face. */
function placeOf(arch: NaturalArch): number | undefined {
  return arch.kind === "flat" ? undefined : arch.at[0];
}

function intervalOf(
  border: readonly FlatPoint<"mm">[],
  placement: number,
  seed: number,
): readonly [low: number, high: number] {
  const points = Object.fromEntries(
    border.map((point, index) => [`p${index}`, measuredPoint(point, mm(placement))]),
  );
  const { interval } = propagateByMonteCarlo(
    (values) => ({ x: placeOf(archOf(Object.values(values), placement)) }),
    points,
    { seed, draws: DRAWS },
  );
  return interval.x ?? [Number.NaN, Number.NaN];
}
