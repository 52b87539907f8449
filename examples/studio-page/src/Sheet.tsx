import { pages } from "./page-state.js";

/** The pages to print; the screen never shows them, paper shows nothing else. */
export function Sheet() {
  return (
    <div class="sheet" aria-hidden="true">
      {pages.value.map((page, index) => (
        <div key={index} class="paper" dangerouslySetInnerHTML={{ __html: page }} />
      ))}
    </div>
  );
}
