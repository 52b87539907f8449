import type { RefObject } from "preact";
import { useLayoutEffect, useState } from "preact/hooks";
import type { Box } from "./box.js";

/** How long a pixel of the screen is on the stage, so that dots and letters have one size at any zoom. */
export function useUnit(element: RefObject<HTMLElement | null>, { width, height }: Box): number {
  const [size, setSize] = useState({ width: 360, height: 360 });
  useLayoutEffect(() => {
    const { current } = element;
    if (current === null) return undefined;
    const watch = new ResizeObserver(() => {
      setSize({ width: current.clientWidth || 1, height: current.clientHeight || 1 });
    });
    watch.observe(current);
    return () => {
      watch.disconnect();
    };
  }, [element]);
  return Math.max(width / size.width, height / size.height);
}
