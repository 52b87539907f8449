import type { Note } from "../../units/index.js";
import { say, type Words } from "../../words/index.js";
import type { Keyed } from "../canvas/label-layer.js";
import { element, type SvgElement } from "../canvas/svg.js";

export function listOfNotes(notes: readonly Note[], words: Words): SvgElement | undefined {
  const items = notes.map((note) => element("li", {}, [say(note, words)]));
  return items.length === 0 ? undefined : element("ul", { class: "said two" }, items);
}

export function keyedList(entries: readonly Keyed[]): SvgElement | undefined {
  const items = entries.map(({ key, text }) =>
    element("li", {}, [element("b", {}, [key]), " ", text]),
  );
  return items.length === 0 ? undefined : element("ul", { class: "keyed" }, items);
}
