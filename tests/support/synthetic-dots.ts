import { type CompleteDots, mm, type Side } from "brow-geometry";
import fc from "fast-check";

/** Invented dots of one brow of an adult, in millimetres; the same place on either side. */
export function syntheticDots(side: Side): CompleteDots<"mm"> {
  const at = (distance: number, height: number): CompleteDots<"mm">["tailEnd"] =>
    mm([side === "left" ? distance : -distance, height]);
  return {
    upperStart: at(15, 20),
    upperBody: at(27, 23.5),
    upperArch: at(39, 26),
    tailEnd: at(57, 17.5),
    lowerStart: at(15, 12.5),
    lowerBody: at(27, 17),
    lowerArch: at(39, 20.5),
  };
}

/** Dots of one brow, each up to 3 mm from the synthetic one's. */
export function anyDots(side: Side): fc.Arbitrary<CompleteDots<"mm">> {
  const shift = fc.double({ min: -3, max: 3, noNaN: true });
  const dots = syntheticDots(side);
  const near = ([x, y]: CompleteDots<"mm">["tailEnd"]): fc.Arbitrary<
    CompleteDots<"mm">["tailEnd"]
  > => fc.tuple(shift, shift).map(([byX, byY]) => mm([x + byX, y + byY]));
  return fc.record({
    upperStart: near(dots.upperStart),
    upperBody: near(dots.upperBody),
    upperArch: near(dots.upperArch),
    tailEnd: near(dots.tailEnd),
    lowerStart: near(dots.lowerStart),
    lowerBody: near(dots.lowerBody),
    lowerArch: near(dots.lowerArch),
  });
}
