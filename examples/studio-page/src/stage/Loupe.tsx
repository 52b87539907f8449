import { type ReadonlySignal, useComputed } from "@preact/signals";
import type { ComponentChildren } from "preact";
import type { Picture } from "../appointment/basis.js";
import { type Spot, viewBox } from "./box.js";

interface LoupeProps {
  readonly at: ReadonlySignal<Spot | undefined>;
  readonly unit: number;
  /** Of the stage: the loupe stands in the corner away from the finger. */
  readonly middle: number;
  readonly picture: Picture | undefined;
  readonly children: ComponentChildren;
}

/** Pixels of the screen that the loupe looks at, each way, and how many times as large it shows them. */
const SEEN = 22;
const LARGER = 3;

/** What lies beneath the finger, enlarged. */
export function Loupe({ at, unit, middle, picture, children }: LoupeProps) {
  const radius = SEEN * unit;
  const arm = 5 * unit;
  const spot = () => at.value ?? [0, 0];
  const box = useComputed(() => {
    const [x, y] = spot();
    return viewBox({ x: x - radius, y: y - radius, width: 2 * radius, height: 2 * radius });
  });
  const aim = useComputed(() => {
    const [x, y] = spot();
    return `M${x - arm} ${y}h${2 * arm}M${x} ${y - arm}v${2 * arm}`;
  });
  const look = useComputed(() => `loupe ${spot()[0] > middle ? "left" : "right"}`);
  return (
    <svg class={look} viewBox={box} style={{ "--unit": unit / LARGER }} aria-hidden="true">
      {picture && <image href={picture.href} width={picture.width} height={picture.height} />}
      {children}
      <path class="aim" d={aim} />
    </svg>
  );
}
