import type { ComponentChildren } from "preact";
import type { Picture } from "../appointment/basis.js";
import { type Spot, viewBox } from "./box.js";

interface LoupeProps {
  readonly at: Spot;
  readonly unit: number;
  /** In the corner away from the finger. */
  readonly isLeft: boolean;
  readonly picture: Picture | undefined;
  readonly children: ComponentChildren;
}

/** Pixels of the screen that the loupe looks at, each way, and how many times as large it shows them. */
const SEEN = 22;
const LARGER = 3;

/** What lies beneath the finger, enlarged. */
export function Loupe({ at: [x, y], unit, isLeft, picture, children }: LoupeProps) {
  const radius = SEEN * unit;
  const box = { x: x - radius, y: y - radius, width: 2 * radius, height: 2 * radius };
  const arm = 5 * unit;
  return (
    <svg
      class={`loupe ${isLeft ? "left" : "right"}`}
      viewBox={viewBox(box)}
      style={{ "--unit": unit / LARGER }}
      aria-hidden="true"
    >
      {picture && <image href={picture.href} width={picture.width} height={picture.height} />}
      {children}
      <path class="aim" d={`M${x - arm} ${y}h${2 * arm}M${x} ${y - arm}v${2 * arm}`} />
    </svg>
  );
}
