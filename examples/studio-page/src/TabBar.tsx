import { drawingFor, said, type Tab, tab, TABS } from "./page-state.js";
import { text } from "./words/language.js";

const ICONS: Readonly<Record<Tab, string>> = {
  face: "M12 3a7 8 0 0 1 7 8a7 10 0 0 1-14 0a7 8 0 0 1 7-8M8.5 11h2M13.5 11h2M10 16q2 1.4 4 0",
  map: "M3 14Q8 8 14 8.5Q18 9.500 21 13M3 17Q9 12 14 12Q18 12 21 13",
  shape: "M4 7h10M18 7h2M4 17h2M10 17h10M16 5v4M8 15v4",
  check: "M4 12l5 5L20 6",
  keep: "M7 3h8l4 4v14H7zM15 3v4h4M10 13h6M10 17h6",
};

/** The five places of the page. */
export function TabBar() {
  return (
    <nav aria-label={text.value.steps}>
      {TABS.map((one) => (
        <button
          key={one}
          type="button"
          aria-current={one === tab.value ? "page" : undefined}
          onClick={() => {
            tab.value = one;
            said.value = "";
            drawingFor.value = undefined;
          }}
        >
          <svg viewBox="0 0 24 24" aria-hidden="true">
            <path d={ICONS[one]} />
          </svg>
          {text.value.tabs[one]}
        </button>
      ))}
    </nav>
  );
}
