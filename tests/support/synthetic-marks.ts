import { type CompleteMarks, mm, type Side } from "brow-geometry";
import fc from "fast-check";

/** Invented dots of one brow of an adult, in millimetres; the same place on either side. */
export function syntheticMarks(side: Side): CompleteMarks<"mm"> {
  const at = (distance: number, height: number): CompleteMarks<"mm">["tailEnd"] =>
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
export function anyMarks(side: Side): fc.Arbitrary<CompleteMarks<"mm">> {
  const shift = fc.double({ min: -3, max: 3, noNaN: true });
  const marks = syntheticMarks(side);
  const near = ([x, y]: CompleteMarks<"mm">["tailEnd"]): fc.Arbitrary<
    CompleteMarks<"mm">["tailEnd"]
  > => fc.tuple(shift, shift).map(([byX, byY]) => mm([x + byX, y + byY]));
  return fc.record({
    upperStart: near(marks.upperStart),
    upperBody: near(marks.upperBody),
    upperArch: near(marks.upperArch),
    tailEnd: near(marks.tailEnd),
    lowerStart: near(marks.lowerStart),
    lowerBody: near(marks.lowerBody),
    lowerArch: near(marks.lowerArch),
  });
}
