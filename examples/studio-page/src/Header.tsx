import { kept, canRedo, canUndo, redo, undo } from "./appointment/history.js";
import { text } from "./words/language.js";

/** Where one is, and the way back. */
export function Header() {
  const { visit, visits } = kept.value;
  const weeks = visit === undefined ? undefined : visits[visit]?.weeks;
  const title =
    weeks === undefined
      ? text.value.title
      : weeks === 0
        ? text.value.titleFresh
        : text.value.titleHealed(weeks);
  return (
    <header>
      <h1>{title}</h1>
      <button type="button" aria-label={text.value.undo} disabled={!canUndo.value} onClick={undo}>
        ↶
      </button>
      <button type="button" aria-label={text.value.redo} disabled={!canRedo.value} onClick={redo}>
        ↷
      </button>
    </header>
  );
}
