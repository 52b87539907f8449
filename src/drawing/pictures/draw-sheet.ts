import {
  type BrowPlan,
  type CautionCode,
  cautionsToSay,
  type DrawnCheck,
} from "../../mapping/index.js";
import { movesToMake, requirePlan } from "../../mapping/internal.js";
import { type Length, mm, type Note } from "../../units/index.js";
import { refusingAs, requireWithin, requireWord } from "../../units/internal.js";
import { ENGLISH, say, type Words } from "../../words/index.js";
import { label, roundingOf } from "../../words/internal.js";
import { type Brush, brushOf } from "../canvas/brush.js";
import type { Keyed } from "../canvas/label-layer.js";
import { type Look, requireLook } from "../canvas/look.js";
import { element, pictureElement, type SvgElement, type SvgNode } from "../canvas/svg.js";
import { TYPE_SIZES } from "../canvas/text-size.js";
import { uprightView } from "../canvas/view.js";
import { correctionEntries } from "../layers/check-layer.js";
import { findingEntries } from "../layers/findings-layer.js";
import { pinEntries } from "../layers/pins-layer.js";
import type { AlsoShown } from "../layers/plan-layers.js";
import { documentSource } from "../sheet/document.js";
import { type Paper, PAPERS, widthOn } from "../sheet/paper.js";
import { checkTable, readingsTable, stepsTable } from "../sheet/plan-tables.js";
import { trueSizeFrame, trueSizeMap } from "../sheet/true-size-map.js";
import { rulerDepth, trueSizeRuler } from "../sheet/true-size-ruler.js";
import { describePlan } from "./describe-plan.js";
import { checkEntries, type LegendEntry, planLegend, sample, SAMPLE } from "./legend.js";

/** Something written at the head of a sheet, or to be written there by hand. */
export interface SheetField {
  readonly name: string;
  /** Left out: a line to write on. */
  readonly value?: string;
}

/** How {@link drawSheet} draws. */
export interface SheetDrawing extends Look, AlsoShown {
  /** Default `"A4"`. */
  readonly paper?: Paper;
  /** What the artist's ruler shows at the point it is laid to first, see `workSteps`. Default 0. */
  readonly rulerZero?: Length<"mm">;
  /** Written at the head; those without a value get a line to write on. Default: client, date, artist. */
  readonly fields?: readonly SheetField[];
  /** The smallest type on paper, in points, from 6 to 14. Default 8. */
  readonly leastType?: number;
  /** The nonce of a page's Content-Security-Policy, for the document's one style element. Default: none. */
  readonly nonce?: string;
}

/** Points to a millimetre. */
const MILLIMETRES_A_POINT = 25.4 / 72;

/** Length of the ruler at the foot of every page, in millimetres. */
const RULER_LENGTH = 100;

/** What holds for every map, at the foot of every page. */
const ALWAYS: readonly string[] = [
  "planning-aid",
  "local-law",
  "hygiene",
] satisfies readonly CautionCode[];

/**
 * A plan as a sheet to print at true size, an HTML document of one file: cautions about this map; the face with
 * outlines, dots, lengths and moves; the work step by step, numbered as the moves in the picture, with the ruler's
 * readings that check it; then the reasons, the check of what was drawn where it is given, and
 * everything that is read on the brows with decisions. What the plan holds by itself has no uncertainty there,
 * and no decision.
 *
 * Browsers lay it out and break it into pages: two by default, on paper; on a screen it takes the width that there is.
 * It has no script and loads nothing. The face is drawn as it is seen from the front, at its size in
 * millimetres. Rulers are printed on it so that a printer that stretches gives itself away.
 *
 * @throws GeometryError `out-of-range` where the face is too wide for the paper, the type is too small or too large,
 * or the paper or the theme is unknown
 *
 * @example
 * ```ts
 * import { mm, planBrows } from "brow-geometry";
 * import { drawSheet } from "brow-geometry/drawing";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: [mm([sign * 15, 20]), mm([sign * 38, 27]), mm([sign * 57, 18])] },
 * });
 * const plan = planBrows({ right: side(-1), left: side(1), midline: {} });
 * const html = drawSheet(plan, { paper: "letter", fields: [{ name: "Client", value: "(invented)" }] });
 * html.startsWith("<!DOCTYPE html>"); // → true
 * html.includes("@page{size:letter"); // → true
 * ```
 */
export function drawSheet(plan: BrowPlan, options: SheetDrawing = {}): string {
  return refusingAs("drawSheet", () => {
    requirePlan(plan);
    requireLook(options);
    const { paper = "A4", words = ENGLISH, leastType = 8 } = options;
    requireWord("paper", paper, Object.keys(PAPERS));
    requireWithin("leastType", leastType, 6, 14);
    const { title = label(words, "title-plan"), overlap = false, rulerZero = mm(0) } = options;
    const { fields = fieldsIn(words), check, nonce } = options;
    const brush = brushOf(uprightView([0, 0], 1, leastType * MILLIMETRES_A_POINT), options);
    const { palette } = brush;
    const width = widthOn(paper);
    const cautions = cautionsToSay(plan).filter(({ at }) => at === undefined);
    const ofThis = cautions.filter(({ code }) => !ALWAYS.includes(code));
    const hasMoves = movesToMake(plan).some(({ kind }) => kind !== "place");
    const entries = [
      ...planLegend({ ...plan, reasons: [], cautions: [] }, words, { overlap }),
      ...(hasMoves ? [{ text: label(words, "legend-move"), role: "move" } as const] : []),
    ];
    const body = [
      element("header", {}, [
        element("h1", {}, [title]),
        fields.length === 0 ? undefined : element("dl", { class: "fields" }, fields.map(fieldOf)),
      ]),
      ...(ofThis.length === 0
        ? []
        : [
            element("section", { class: "cautions" }, [
              element("h2", {}, [label(words, "heading-cautions")]),
              saidIn(ofThis, words),
            ]),
          ]),
      element("figure", {}, [
        mapOf(plan, title, width, brush, { overlap }),
        legendList(entries, brush, label(words, "sheet-true-size")),
      ]),
      keyedList([...pinEntries(plan, words), ...findingEntries(plan, words)]),
      element("h2", {}, [label(words, "heading-steps")]),
      stepsTable(plan, rulerZero, words),
      element("h2", {}, [label(words, "heading-reasons")]),
      saidIn(plan.reasons, words),
      ...(check === undefined ? [] : checkOf(plan, check, width, brush)),
      element("h2", {}, [label(words, "heading-readings")]),
      element("p", {}, [label(words, "sheet-readings", { unit: words.lengths })]),
      readingsTable(plan, words),
    ];
    const foot = [
      footRuler(brush),
      element("p", {}, [label(words, "sheet-print")]),
      element("p", { class: "law" }, [
        cautions
          .filter(({ code }) => ALWAYS.includes(code))
          .map((caution) => say(caution, words))
          .join(" "),
      ]),
    ];
    return documentSource({ paper, title, words, palette, leastType, nonce, body, foot });
  });
}

function fieldsIn(words: Words): readonly SheetField[] {
  return (["client", "date", "artist"] as const).map((field) => ({
    name: label(words, `field-${field}`),
  }));
}

function fieldOf({ name, value = "" }: SheetField): SvgElement {
  return element("div", {}, [
    element("dt", {}, [element("bdi", {}, [name])]),
    element("dd", {}, [element("bdi", {}, [value])]),
  ]);
}

function saidIn(notes: readonly Note[], words: Words): SvgElement {
  const items = notes.map((note) => element("li", {}, [say(note, words)]));
  return element("ul", { class: "said two" }, items);
}

function keyedList(entries: readonly Keyed[]): SvgElement | undefined {
  const items = entries.map(({ key, text }) =>
    element("li", {}, [element("b", {}, [key]), " ", text]),
  );
  return items.length === 0 ? undefined : element("ul", { class: "keyed" }, items);
}

/** The face at true size, told for who does not see it; what stands beside it as text is not told again. */
function mapOf(
  plan: BrowPlan,
  title: string,
  width: number,
  brush: Brush,
  shown: AlsoShown,
): SvgElement {
  const { words } = brush;
  const { frame, elements, unplaced } = trueSizeMap(plan, width, brush, shown);
  const described = describePlan({ ...plan, reasons: [], cautions: [] }, unplaced, words, {
    overlap: shown.overlap ?? false,
  });
  return pictureElement({ ...frame, class: "map" }, title, described, words, elements);
}

function legendList(entries: readonly LegendEntry[], brush: Brush, note?: string): SvgElement {
  const { words } = brush;
  const rounding = roundingOf(words);
  const rounded =
    rounding === undefined ? [] : [{ key: "≈", text: label(words, "legend-rounded", rounding) }];
  const items = [...entries, ...rounded].map((entry) =>
    element("li", {}, [
      "key" in entry ? element("b", {}, [entry.key]) : samplePicture(entry, brush),
      element("span", {}, [entry.text]),
    ]),
  );
  return element("ul", { class: "legend" }, [
    ...items,
    note === undefined ? undefined : element("li", { class: "note" }, [note]),
  ]);
}

/** Height of a sample, in millimetres. */
const SAMPLE_HEIGHT = 2.6;

function samplePicture(entry: LegendEntry, brush: Brush): SvgElement {
  const viewBox = `0 0 ${SAMPLE} ${SAMPLE_HEIGHT}`;
  return element("svg", { xmlns: SVG, viewBox, "aria-hidden": "true" }, [
    sample(entry, 0, SAMPLE_HEIGHT / 2, brush),
  ]);
}

/** What was drawn: in a picture of its own, what to correct, and every figure. */
function checkOf(
  plan: BrowPlan,
  check: DrawnCheck,
  width: number,
  brush: Brush,
): readonly (SvgNode | undefined)[] {
  const { words } = brush;
  const heading = label(words, "heading-check");
  const dots = checkEntries(check, words).filter((entry) => !("key" in entry && entry.key !== "?"));
  return [
    element("h2", {}, [heading]),
    element("figure", {}, [
      check.dots.length === 0 ? undefined : mapOf(plan, heading, width, brush, { check }),
      legendList(dots, brush),
    ]),
    keyedList(correctionEntries(check, words)),
    checkTable(plan, check, words),
  ];
}

/** A ruler to hold a real one against, with room for the numbers at its ends. */
function footRuler(brush: Brush): SvgElement {
  const aside = TYPE_SIZES.label;
  const [width, height] = [RULER_LENGTH + 2 * aside, rulerDepth(brush) + 1];
  const { language: lang, direction } = brush.words;
  const frame = trueSizeFrame({ x: -aside, y: -1, width, height });
  return element("svg", { xmlns: SVG, ...frame, lang, direction, "aria-hidden": "true" }, [
    trueSizeRuler({ from: [0, 0], length: RULER_LENGTH, direction: "across" }, brush),
  ]);
}

const SVG = "http://www.w3.org/2000/svg";
