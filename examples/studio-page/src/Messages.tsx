import { busy, said } from "./page-state.js";

/** What was last said, and what takes a while: read aloud too. */
export function Messages() {
  const text = busy.value === "" ? said.value : busy.value;
  return (
    <div class="messages" role="status" aria-live="polite" data-busy={busy.value !== ""}>
      {text !== "" && (
        <p>
          {text}
          {busy.value === "" && (
            <button
              type="button"
              aria-label="Close this message"
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
