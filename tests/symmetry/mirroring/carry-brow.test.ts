import { fc, test } from "@fast-check/vitest";
import {
  type Brow,
  type CompleteDots,
  FACE_MIDLINE,
  lengthBetween,
  mirror,
  mm,
  otherSide,
  type Side,
  type Skin,
} from "brow-geometry";
import { carryBrow } from "brow-geometry/symmetry";
import { DOT_NAMES } from "../../../src/landmarks/internal.js";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { anyDots, syntheticDots } from "../../support/synthetic-dots.js";

const skin: Skin = { kind: "modelled", width: mm(86.7), relativeU: 0.12 };

const anySkin: fc.Arbitrary<Skin> = fc.oneof(
  fc.constant<Skin>({ kind: "flat" }),
  fc
    .double({ min: 75, max: 110, noNaN: true })
    .map((width): Skin => ({ kind: "modelled", width: mm(width), relativeU: 0.12 })),
);

const anyLeading: fc.Arbitrary<{ side: Side; dots: CompleteDots<"mm"> }> = fc
  .constantFrom<Side>("right", "left")
  .chain((side) => anyDots(side).map((dots) => ({ side, dots })));

/** A start on the other side, up to 3 mm from the mirror image of the leading one. */
function startNear(
  { side, dots }: { side: Side; dots: CompleteDots<"mm"> },
  [outward, up]: readonly [number, number],
): CompleteDots<"mm">["upperStart"] {
  const [x, y] = mirror(dots.upperStart, FACE_MIDLINE);
  return mm([x + (side === "left" ? -outward : outward), y + up]);
}

const anyShift = fc.tuple(
  fc.double({ min: -3, max: 3, noNaN: true }),
  fc.double({ min: -3, max: 3, noNaN: true }),
);

describe("carryBrow", () => {
  test.prop([anyLeading])("by mirror is the mirror image, and back again", (leading) => {
    const carried = carryBrow(leading, { method: "mirror" });
    expect(carried.side).toBe(otherSide(leading.side));
    expect(carried.dots).toEqual(mirror(leading.dots, FACE_MIDLINE));
    expectClose(carryBrow(carried, { method: "mirror" }).dots, leading.dots, 1e-12);
    for (const dot of DOT_NAMES) expect(carried.fromMirror[dot]).toEqual({ outward: 0, up: 0 });
  });

  test.prop([anyLeading, anyShift, anySkin])(
    "by measure keeps the other side's start, the leading heights and the ruler lengths",
    (leading, shift, ruled) => {
      const start = startNear(leading, shift);
      const { dots } = carryBrow(leading, { method: "measure", start, skin: ruled });
      expectClose(dots.upperStart, start, 1e-12);
      expectClose(dots.upperArch[1], leading.dots.upperArch[1], 1e-12);
      expectClose(dots.tailEnd[1], leading.dots.tailEnd[1], 1e-12);
      for (const [from, to] of [
        ["upperStart", "upperArch"],
        ["upperArch", "tailEnd"],
      ] as const) {
        const leadingLength = lengthBetween(leading.dots[from], leading.dots[to], ruled);
        expectClose(lengthBetween(dots[from], dots[to], ruled), leadingLength, 1e-9);
      }
    },
  );

  test.prop([anyLeading, anySkin])("both ways agree on an even face", (leading, ruled) => {
    const start = startNear(leading, [0, 0]);
    const measured = carryBrow(leading, { method: "measure", start, skin: ruled });
    expectClose(measured.dots, mirror(leading.dots, FACE_MIDLINE), 1e-9);
    for (const dot of DOT_NAMES) expectClose(measured.fromMirror[dot], { outward: 0, up: 0 }, 1e-9);
  });

  test.prop([anyLeading, anyShift])("says how the two ways differ", (leading, shift) => {
    const start = startNear(leading, shift);
    const { dots, fromMirror, side } = carryBrow(leading, { method: "measure", start, skin });
    const image = mirror(leading.dots, FACE_MIDLINE);
    const sign = side === "left" ? 1 : -1;
    for (const dot of DOT_NAMES) {
      expectClose(fromMirror[dot].outward, sign * (dots[dot][0] - image[dot][0]), 1e-12);
      expectClose(fromMirror[dot].up, dots[dot][1] - image[dot][1], 1e-12);
    }
    expectClose(fromMirror.upperStart, { outward: shift[0], up: shift[1] }, 1e-9);
  });

  it("takes whole borders along, and keeps vertical thickness", () => {
    const { brow } = syntheticFace().left;
    const leading = { side: "left", dots: syntheticDots("left"), brow } as const;
    const carried = carryBrow(leading, { method: "measure", start: mm([-17, 21]), skin });
    const thickness = ({ upper, lower = [] }: Brow<"mm">): readonly number[] =>
      upper.map(([, y], index) => y - (lower[index]?.[1] ?? Number.NaN));
    expectClose(carried.brow && thickness(carried.brow), thickness(brow), 1e-9);
    expectClose(carried.dots.upperStart[1] - carried.dots.lowerStart[1], 7.5, 1e-9);
    expectClose(carried.dots.upperArch[1] - carried.dots.lowerArch[1], 5.5, 1e-9);
    // The border's start lies half a millimetre inward of the start dot, and stays there.
    expectClose(carried.brow?.upper[0], [-16.5, 21], 1e-9);
    expectClose(carryBrow(leading, { method: "mirror" }).brow, mirror(brow, FACE_MIDLINE), 1e-12);
  });

  it("goes less far out where the skin falls away: one side starts 3 mm farther out", () => {
    const leading = { side: "left", dots: syntheticDots("left") } as const;
    const ruled = carryBrow(leading, { method: "measure", start: mm([-18, 20]), skin });
    const { outward } = ruled.fromMirror.tailEnd;
    expect(outward).toBeGreaterThan(1);
    expect(outward).toBeLessThan(3);
    const flat = carryBrow(leading, {
      method: "measure",
      start: mm([-18, 20]),
      skin: { kind: "flat" },
    });
    expectClose(flat.fromMirror.tailEnd.outward, 3, 1e-9);
  });

  it("goes straight out on flat skin where all is level, however sums round", () => {
    const level = (x: number): CompleteDots<"mm">["tailEnd"] => mm([x, 20]);
    const dots = { ...syntheticDots("left"), upperArch: level(39.1), tailEnd: level(57.3) };
    for (let tenth = 0; tenth < 100; tenth += 1) {
      const leading = {
        side: "left",
        dots: { ...dots, upperStart: level(10 + tenth / 10) },
      } as const;
      const start = mm([-10 - tenth / 7, 20]);
      const ruled = { method: "measure", start, skin: { kind: "flat" } } as const;
      const { tailEnd } = carryBrow(leading, ruled).dots;
      expectClose(tailEnd[0], start[0] - (57.3 - 10 - tenth / 10), 1e-9);
    }
  });

  it("has no answer where the heights alone are farther apart than the ruler reads", () => {
    const leading = { side: "left", dots: syntheticDots("left") } as const;
    const start = mm([-15, -20]);
    const { code, message } = refusal(() => carryBrow(leading, { method: "measure", start, skin }));
    expect(code).toBe("no-solution");
    expect(message).toContain("46.0 mm");
  });

  it("refuses dots out of order", () => {
    const dots = { ...syntheticDots("left"), tailEnd: mm([30, 17]) };
    const leading = { side: "left", dots } as const;
    const start = mm([-15, 20]);
    expect(refusal(() => carryBrow(leading, { method: "measure", start, skin })).code).toBe(
      "out-of-range",
    );
  });
});
