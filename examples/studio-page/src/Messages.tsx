import { busy, said } from "./page-state.js";
import { text } from "./words/language.js";

/** What was last said, and what takes a while: read aloud too. */
export function Messages() {
  const message = busy.value === "" ? said.value : busy.value;
  return (
    <div class="messages" role="status" aria-live="polite" data-busy={busy.value !== ""}>
      {message !== "" && (
        <p>
          {message}
          {busy.value === "" && (
            <button
              type="button"
              aria-label={text.value.closeMessage}
              onClick={() => {
                said.value = "";
              }}
            >
              ×
            </button>
          )}
        </p>
      )}
    </div>
  );
}
