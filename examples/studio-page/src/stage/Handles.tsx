import type { Handle } from "./handle.js";

interface HandlesProps {
  readonly handles: readonly Handle[];
  readonly unit: number;
  readonly onKey: (handle: Handle, event: KeyboardEvent) => void;
}

/** Seen sizes in pixels of the screen; what can be touched around them is larger. */
const RADIUS: Readonly<Record<Handle["look"], number>> = { dot: 5, pinned: 6, border: 6, mark: 9 };
const FOCUS_RADIUS = 14;

export function Handles({ handles, unit, onKey }: HandlesProps) {
  return (
    <>
      {handles.map((handle) => (
        <g
          key={handle.id}
          class={`handle ${handle.look}`}
          data-handle={handle.id}
          transform={`translate(${handle.at[0]} ${handle.at[1]}) scale(${unit})`}
          tabindex={0}
          role="button"
          aria-label={handle.label}
          aria-describedby="keys"
          onKeyDown={(event) => onKey(handle, event)}
        >
          <circle class="focus" r={FOCUS_RADIUS} />
          <circle class="spot" r={RADIUS[handle.look]} />
          {handle.look === "mark" && <path class="cross" d="M-16 0H16M0 -16V16" />}
        </g>
      ))}
    </>
  );
}
