import { kept, canRedo, canUndo, redo, undo } from "./appointment/history.js";

/** Where one is, and the way back. */
export function Header() {
  const { visit, visits } = kept.value;
  const weeks = visit === undefined ? undefined : visits[visit]?.weeks;
  const title =
    weeks === undefined
      ? "Brow map"
      : weeks === 0
        ? "Result, fresh"
        : `Result after ${weeks} weeks`;
  return (
    <header>
      <h1>{title}</h1>
      <button type="button" aria-label="Undo" disabled={!canUndo.value} onClick={undo}>
        ↶
      </button>
      <button type="button" aria-label="Redo" disabled={!canRedo.value} onClick={redo}>
        ↷
      </button>
    </header>
  );
}
