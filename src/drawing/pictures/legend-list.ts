import type { Brush } from "../canvas/brush.js";
import { element, SVG_SPACE, type SvgElement } from "../canvas/svg.js";
import { type LegendEntry, roundedEntries, sample, SAMPLE } from "./legend.js";

/** Height of a sample, in millimetres. */
const HEIGHT = 2.6;

/** A legend whose texts a browser sets, with a note behind its entries. */
export function legendList(
  entries: readonly LegendEntry[],
  brush: Brush,
  note?: string,
): SvgElement {
  const items = [...entries, ...roundedEntries(brush.words)].map((entry) =>
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

function samplePicture(entry: LegendEntry, brush: Brush): SvgElement {
  const viewBox = `0 0 ${SAMPLE} ${HEIGHT}`;
  return element("svg", { xmlns: SVG_SPACE, viewBox, "aria-hidden": "true" }, [
    sample(entry, 0, HEIGHT / 2, brush),
  ]);
}
