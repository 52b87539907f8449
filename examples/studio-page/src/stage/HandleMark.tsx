import { computed, type ReadonlySignal } from "@preact/signals";
import { memo } from "preact/compat";
import { useMemo } from "preact/hooks";
import type { Spot } from "./box.js";
import type { Handle } from "./handle.js";

interface HandleProps {
  readonly handle: Handle;
  readonly unit: number;
  readonly index: number;
  /** Where handles are while one is dragged, in their order. */
  readonly moving: ReadonlySignal<readonly Spot[]> | undefined;
}

/** Seen sizes in pixels of the screen; what can be touched around them is larger. */
const RADIUS: Readonly<Record<Handle["look"], number>> = { dot: 5, pinned: 6, border: 6, mark: 9 };
const FOCUS_RADIUS = 14;

/** A handle as it is seen; what is heard of it changes once a finger has let go. */
export const HandleMark = memo(function HandleMark({ handle, unit, index, moving }: HandleProps) {
  const { id, label, at, look } = handle;
  const transform = useMemo(
    () =>
      computed(() => {
        const [x, y] = moving?.value[index] ?? at;
        return `translate(${x} ${y}) scale(${unit})`;
      }),
    [handle, unit, moving],
  );
  return (
    <g
      class={`handle ${look}`}
      data-handle={id}
      transform={transform}
      tabindex={0}
      role="button"
      aria-label={label}
      aria-describedby="keys"
    >
      <circle class="focus" r={FOCUS_RADIUS} />
      <circle class="spot" r={RADIUS[look]} />
      {look === "mark" && <path class="cross" d="M-16 0H16M0 -16V16" />}
    </g>
  );
});
