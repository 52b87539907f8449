import { distanceAlongLine, fitLine, pointOnLine } from "../geometry/index.js";
import { polynomialAt, polynomialWeights } from "../geometry/internal.js";
import { BY_HAND } from "../landmarks/internal.js";
import {
  type FlatPoint,
  type Length,
  length,
  measured,
  type Note,
  type Point,
  type Scale,
  type ScaleNoteCode,
} from "../units/index.js";
import {
  refuse,
  refusingAs,
  requireFinite,
  requireFinitePoint,
  requireNames,
  requirePositive,
  scaleNote,
} from "../units/internal.js";
import { requireBaseline } from "./baseline.js";
import { type ReferenceOptions, scaleOfKnown } from "./reference-depth.js";
import {
  endSlopes,
  type Place,
  readingExcess,
  type RulerModel,
  simplestModel,
  usualSlope,
} from "./ruler-model.js";

/** One mark of a ruler that a photo shows, and the reading beside it. */
export interface RulerMark {
  readonly at: Point<"px">;
  readonly reading: Length<"mm">;
}

/** What is known of the marks of a ruler, beyond their readings. */
export type RulerOptions = Omit<ReferenceOptions, "u">;

/** A ruler found in a photo. */
export interface RulerFit {
  readonly scale: Scale;
  /** Where the reading 0 lies, on the ruler or beyond its ends. */
  readonly zero: FlatPoint<"px">;
  /** By how much each reading differs from the fit; a reading that was rejected too. */
  readonly residuals: readonly Length<"mm">[];
  /** How far each mark lies off the straight edge. */
  readonly offsets: readonly Length<"px">[];
  /** Place of the reading that was left out, counted from 0. */
  readonly rejected?: number;
}

/**
 * A ruler from two or more of its marks: its straight edge by total least squares, and the readings
 * along it, which need not start at zero nor run evenly.
 *
 * Of four marks or more, one mistyped reading is found, left out and named. A ruler that recedes
 * from the camera, so that its readings crowd, is noted: its scale is that of the middle of its
 * marks, with an uncertainty that covers its ends.
 *
 * @throws GeometryError `wrong-count`, `not-finite`, `coincident-points`, `out-of-range`;
 * `inconsistent` where a reading repeats; `ill-conditioned` where the marks lie within five of
 * their uncertainties
 *
 * @example
 * ```ts
 * import { fitRuler, mm, px } from "brow-geometry";
 * const readings = [10, 20, 30, 40, 60]; // the last one should have been 50
 * const ruler = fitRuler(
 *   readings.map((reading, index) => ({ at: px([400 + 80 * index, 900]), reading: mm(reading) })),
 * );
 * ruler.scale.factor; // → 0.125
 * ruler.zero; // → [320.0, 900.0]
 * ruler.rejected; // → 4
 * ruler.residuals; // → [0.0, 0.0, 0.0, 0.0, 10.0]
 * ```
 */
export function fitRuler(marks: readonly RulerMark[], options: RulerOptions = {}): RulerFit {
  return refusingAs("fitRuler", () => {
    requireNames("options", options, ["placement", "depth"]);
    requireMarks(marks);
    const edge = fitLine(marks.map(({ at }) => at));
    const places = marks.map(({ at, reading }) => ({
      reading,
      along: distanceAlongLine(at, edge.line),
    }));
    const placement = options.placement ?? BY_HAND * Math.abs(usualSlope(places));
    requirePositive("placement", placement);
    const model = simplestModel(places, placement);
    const { curve, middle } = model;
    const slope = polynomialAt(curve, middle, 1);
    const slopeU = placement * model.widening * Math.hypot(...polynomialWeights(curve, middle, 1));
    const seen = measured<number>(Math.abs(slope), slopeU);
    requireBaseline("marks", marks, seen);
    const millimetre = measured<number>(1, recession(model) / seen.value);
    return {
      scale: scaleOfKnown("ruler", millimetre, seen, options.depth, modelNotes(model, places)),
      zero: pointOnLine(edge.line, length(polynomialAt(curve, 0))),
      residuals: places.map((place) => length(readingExcess(place, curve))),
      offsets: edge.residuals,
      ...(model.rejected === undefined ? {} : { rejected: model.rejected }),
    };
  });
}

/**
 * The scale of a photo from two or more marks of a ruler and the readings beside them: the `scale` of
 * {@link fitRuler}, which also tells where zero lies and how far each reading is off.
 *
 * @throws GeometryError as {@link fitRuler}
 *
 * @example
 * ```ts
 * import { mm, px, scaleFromRuler } from "brow-geometry";
 * const scale = scaleFromRuler([
 *   { at: px([410, 903]), reading: mm(20) },
 *   { at: px([650, 901]), reading: mm(50) },
 *   { at: px([811, 899]), reading: mm(70) },
 * ]);
 * scale.factor; // → 0.1247
 * scale.u; // → 0.0009
 * ```
 */
export function scaleFromRuler(marks: readonly RulerMark[], options: RulerOptions = {}): Scale {
  return refusingAs("scaleFromRuler", () => fitRuler(marks, options).scale);
}

/** What the scale of the middle leaves open of that at the ends: evenly spread between them. */
function recession(model: RulerModel): number {
  const [first, last] = endSlopes(model);
  return Math.abs(last - first) / (2 * Math.sqrt(3));
}

function modelNotes(model: RulerModel, places: readonly Place[]): readonly Note<ScaleNoteCode>[] {
  const notes: Note<ScaleNoteCode>[] = [];
  const rejected = model.rejected === undefined ? undefined : places[model.rejected];
  if (rejected !== undefined) {
    notes.push(
      scaleNote("reading-rejected", {
        reading: rejected.reading,
        expected: rejected.reading - readingExcess(rejected, model.curve),
      }),
    );
  }
  if (model.curve.powers.length > 2) {
    const [first, last] = endSlopes(model);
    notes.push(scaleNote("ruler-recedes", { first: Math.abs(first), last: Math.abs(last) }));
  }
  if (model.widening > 1) {
    notes.push(scaleNote("readings-scatter", { times: model.widening }));
  }
  return notes;
}

function requireMarks(marks: readonly RulerMark[]): void {
  if (marks.length < 2) {
    refuse("wrong-count", "marks", marks, "at least two marks with their readings");
  }
  const seen = new Set<number>();
  marks.forEach(({ at, reading }, index) => {
    requireFinitePoint(`marks[${index}].at`, at);
    requireFinite(`marks[${index}].reading`, reading);
    if (seen.has(reading)) {
      const need = "a reading that no other mark has";
      refuse("inconsistent", `marks[${index}].reading`, reading, need);
    }
    seen.add(reading);
  });
}
