import {
  type FaceMeasureName,
  type FaceMeasures,
  type MeasureName,
  type ReadableMeasure,
  type SideMeasures,
} from "../landmarks/index.js";
import { type MeasureKind, measureKindOf, READABLE_MEASURES } from "../landmarks/internal.js";
import {
  GeometryError,
  type Length,
  measured,
  type Measured,
  parseLength,
  propagate,
  readCaliper,
  type ReadingOptions,
  readRuler,
  type Side,
} from "../units/index.js";
import {
  refuse,
  refusingAs,
  requireNames,
  requireObject,
  requireWord,
  SIDES,
} from "../units/internal.js";

/** A reading: plain, as written with its unit, or with an uncertainty of its own. */
export type Reading = Length<"mm"> | string | Measured<Length<"mm">>;

/** Readings of one side, as many as were taken. */
export type SideReadingSheet = { readonly [Name in ReadableMeasure]?: Reading };

/** What was read by hand on a face; anything may be left out. */
export interface ReadingSheet {
  readonly right?: SideReadingSheet;
  readonly left?: SideReadingSheet;
  /** Distance between the two upper start dots. */
  readonly startToStart?: Reading;
}

/** How a sheet of readings was taken. */
export interface SheetOptions extends ReadingOptions {
  /** Default `"ruler"`. */
  readonly instrument?: "ruler" | "caliper";
}

/**
 * Readings by hand as the same measures that photos give, each with its uncertainty; the front
 * share follows where front and tail were read.
 *
 * @throws GeometryError `not-parsed` for a reading written without its unit, `out-of-range` for an
 * unknown side, measure or instrument and for more than any face has, and as {@link readRuler}
 *
 * @example
 * ```ts
 * import { compareSides, measuresFromReadings, mm } from "brow-geometry";
 * const sheet = measuresFromReadings({
 *   right: { front: mm(33), tail: "16.5 mm", bodyThickness: "7 mm" },
 *   left: { front: "32,5 mm", tail: "1.55 cm" },
 * });
 * sheet.left.front; // → { value: 32.5, u: 0.144 }
 * sheet.right.frontShare; // → { value: 0.667, u: 0.002 }
 * compareSides(sheet).differences[0]?.difference; // → { value: -0.5, u: 0.204 }
 * ```
 */
export function measuresFromReadings(
  sheet: ReadingSheet,
  options: SheetOptions = {},
): FaceMeasures<Measured> {
  return refusingAs("measuresFromReadings", () => {
    requireSheet(sheet, options);
    const startToStart = sheet.startToStart;
    return {
      right: sideMeasures("right", sheet.right ?? {}, options),
      left: sideMeasures("left", sheet.left ?? {}, options),
      ...(startToStart === undefined
        ? {}
        : { startToStart: readingOf("startToStart", "startToStart", startToStart, options) }),
    };
  });
}

const PLACES = [...SIDES, "startToStart"] as const;

/** A side under another name would be silently ignored. */
function requireSheet(sheet: ReadingSheet, options: SheetOptions): void {
  requireObject("sheet", sheet, "an object with readings, or {}");
  for (const [name, part] of Object.entries(sheet)) {
    if (!PLACES.some((place) => place === name)) {
      refuse("out-of-range", name, part, `another name: one of ${PLACES.join(", ")}`);
    }
  }
  for (const side of SIDES) {
    if (sheet[side] !== undefined) {
      requireObject(side, sheet[side], "an object with readings, or to be left out");
    }
  }
  requireNames("options", options, ["instrument", "zero", "graduation", "pencil"]);
  requireWord("instrument", options.instrument, ["ruler", "caliper"]);
}

function sideMeasures(
  side: Side,
  readings: SideReadingSheet,
  options: SheetOptions,
): SideMeasures<Measured> {
  const measures: { [Name in MeasureName]?: Measured } = {};
  for (const [name, reading] of Object.entries(readings)) {
    requireReadable(side, name, reading);
    measures[name] = readingOf(`${side}.${name}`, name, reading, options);
  }
  const { front, tail } = measures;
  return front === undefined || tail === undefined
    ? measures
    : { ...measures, frontShare: shareOf(side, front, tail) };
}

/** A reading; what is wrong with it is said of its field on the sheet. */
function readingOf(
  field: string,
  measure: FaceMeasureName,
  reading: Reading,
  options: SheetOptions,
): Measured {
  try {
    const read = readByHand(reading, options);
    const most = MOST[measureKindOf(measure)] ?? Infinity;
    if (read.value > most) {
      const need = `at most ${most} mm: is it in tenths of a millimetre?`;
      refuse("out-of-range", field, reading, need);
    }
    return read;
  } catch (error) {
    if (!(error instanceof GeometryError)) throw error;
    const { detail } = error;
    const wrong = Object.hasOwn(OF_INSTRUMENT, detail.field) ? detail.field : field;
    throw new GeometryError(error.code, { ...detail, where: "measuresFromReadings", field: wrong });
  }
}

/**
 * More than any face has, in mm. No reading of a brow is longer than the outer eye corners of the widest adults lie
 * apart: four standard deviations above the mean of men, 93.00 ± 5.56 (Hong Kong periocular norms, BioMed Res Int
 * 2013:821428). Three times the thickest brow of trade practice, 8 mm, and over twice the highest arches of
 * `BROW_HEIGHTS`: ours.
 */
const MOST: { readonly [Kind in MeasureKind]?: number } = {
  length: 115,
  distance: 115,
  gap: 115,
  height: 60,
  thickness: 25,
};

/** What is wrong with these is wrong with every field. */
const OF_INSTRUMENT: { readonly [Option in keyof ReadingOptions]-?: true } = {
  zero: true,
  graduation: true,
  pencil: true,
};

function readByHand(reading: Reading, options: SheetOptions): Measured {
  if (typeof reading === "object") return measured(reading.value, reading.u);
  const length = typeof reading === "string" ? parseLength(reading) : reading;
  return options.instrument === "caliper"
    ? readCaliper(length, options)
    : readRuler(length, options);
}

function shareOf(side: Side, front: Measured, tail: Measured): Measured {
  if (front.value + tail.value === 0) {
    const field = `${side}.front, ${side}.tail`;
    const need = "readings that are not both 0";
    refuse("out-of-range", field, [front.value, tail.value], need);
  }
  const { value, u } = propagate((of) => of.front / (of.front + of.tail), { front, tail });
  return { value, u };
}

function requireReadable(
  side: Side,
  name: string,
  reading: unknown,
): asserts name is ReadableMeasure {
  // A form sends null for a field that nobody filled in.
  if (isReadable(name) && reading !== undefined && reading !== null) return;
  const need = `a reading of ${READABLE_MEASURES.join(", ")}, or to be left out`;
  refuse("out-of-range", `${side}.${name}`, reading, need);
}

function isReadable(name: string): name is ReadableMeasure {
  return READABLE_MEASURES.some((readable) => readable === name);
}
