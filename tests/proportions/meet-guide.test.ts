import { test } from "@fast-check/vitest";
import { distanceFromLine, pointAlong } from "brow-geometry/geometry";
import { FACE_MIDLINE, mirror, mm, guideLine } from "brow-geometry";
import { meetGuide } from "brow-geometry/proportions";
import { describe, expect, it } from "vitest";
import { heightOver } from "../../src/geometry/internal.js";
import { anyBrow, anyFace } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { syntheticFace } from "../support/synthetic-face.js";

const face = syntheticFace();
const start = guideLine(face, "left", "endocanthion-vertical");
const tail = guideLine(face, "left", "alare-through-exocanthion");

describe("meetGuide", () => {
  it("meets the upper border", () => {
    // Between (14.5, 20) and (22, 22.4), at x = 15.9.
    expectClose(meetGuide(start, face.left.brow)?.at, [15.9, 20 + (1.4 / 7.5) * 2.4], 1e-12);
    expect(meetGuide(start, face.left.brow)?.extended).toBe(false);
  });

  it("meets a tail half-way between both borders", () => {
    const brow = {
      upper: mm([
        [40, 30],
        [70, 15],
      ]),
      lower: mm([
        [40, 22],
        [70, 13],
      ]),
    };
    const [upper, lower] = [{ upper: brow.upper }, { upper: brow.lower }].map(
      (alone) => meetGuide(tail, alone)?.at ?? [Number.NaN, Number.NaN],
    );
    expect(upper).not.toEqual(lower);
    const both = meetGuide(tail, brow);
    expectClose(
      both?.at,
      [0, 1].map((axis) => ((upper?.[axis] ?? 0) + (lower?.[axis] ?? 0)) / 2),
      1e-12,
    );
    expectClose(distanceFromLine(both?.at ?? mm([0, 0]), tail.line), 0, 1e-12);
    expectClose(both?.along, meetGuide(tail, { upper: brow.upper })?.along, 0);
  });

  it("takes the one border that a tail guide meets", () => {
    const parallel = mm([
      [40, 0],
      [43, 4],
    ]);
    const brow = {
      upper: mm([
        [40, 30],
        [70, 15],
      ]),
      lower: mm([
        [50, 30],
        [50 + 28.2 / 4, 30 + 38 / 4],
      ]),
    };
    expect(meetGuide(tail, { upper: parallel })).not.toBeUndefined();
    expectClose(meetGuide(tail, brow)?.at, meetGuide(tail, { upper: brow.upper })?.at, 1e-12);
  });

  it("extends a border that is missed, and says so", () => {
    const late = {
      upper: mm([
        [20, 20],
        [40, 26],
        [58, 18],
      ]),
    };
    expectClose(
      meetGuide(start, late),
      { at: [15.9, 20 - 4.1 * 0.3], along: -4.1 * Math.hypot(1, 0.3), extended: true },
      1e-12,
    );
    const short = {
      upper: mm([
        [20, 20],
        [40, 26],
        [48, 24],
      ]),
      lower: mm([
        [20, 12],
        [40, 20],
        [60, 17],
      ]),
    };
    expect(meetGuide(tail, short)?.extended).toBe(true);
  });

  it("goes on from the tip of a tail that ends too early, where its borders would cross", () => {
    // The upper border falls by 3 in 4, the lower one runs level: half-way, the brow falls by 1 in 3.
    const short = {
      upper: mm([
        [20, 26],
        [36, 26],
        [44, 20],
      ]),
      lower: mm([
        [20, 19],
        [44, 19],
      ]),
    };
    const place = meetGuide(tail, short);
    const [x, y] = place?.at ?? [];
    expectClose(y, 19.5 - ((x ?? 0) - 44) / 3, 1e-9);
    expectClose(place?.along, 26 + Math.hypot((x ?? 0) - 44, (y ?? 0) - 19.5), 1e-9);
    expect(place?.extended).toBe(true);
  });

  it("keeps to the border that reaches the guide where the other's extension crosses it", () => {
    const crossing = {
      upper: mm([
        [20, 26],
        [64, 22],
      ]),
      lower: mm([
        [20, 12],
        [40, 20],
      ]),
    };
    const only = meetGuide(tail, { upper: crossing.upper });
    expect(meetGuide(tail, crossing)).toEqual(only);
  });

  it("meets nothing where a border runs beside the guide, or only behind it", () => {
    const upright = {
      upper: mm([
        [20, 10],
        [20, 30],
      ]),
    };
    expect(meetGuide(start, upright)).toBeUndefined();
    // Extended, this border meets the guide below the eye.
    const falling = {
      upper: mm([
        [22, 10],
        [30, 40],
      ]),
    };
    expect(meetGuide(start, falling)).toBeUndefined();
  });

  it("takes the crossing nearest the start, for a tail guide the one nearest the tail", () => {
    const hooked = {
      upper: mm([
        [10, 20],
        [30, 20],
        [30, 24],
        [10, 24],
      ]),
    };
    expectClose(meetGuide(start, hooked)?.at, [15.9, 20], 1e-12);
    const wavy = {
      upper: mm([
        [40, 20],
        [70, 20],
        [70, 30],
        [40, 30],
      ]),
    };
    expectClose(meetGuide(tail, wavy)?.at[1], 30, 1e-12);
  });

  test.prop([anyFace(1), anyBrow()])("lies on the guide and on the border", (any, brow) => {
    for (const guide of [
      guideLine(any, "left", "alare-vertical"),
      guideLine(any, "left", "alare-through-pupil"),
    ]) {
      const place = meetGuide(guide, brow);
      if (place === undefined) continue;
      expectClose(distanceFromLine(place.at, guide.line), 0, 1e-9);
      if (!place.extended) expectClose(pointAlong(brow.upper, place.along), place, 1e-9);
      // As the last 5 mm of the border run: the vertical guide comes first, which heights can tell.
      else if (guide.convention === "alare-vertical") {
        expectClose(heightOver(mm(place.at[0]), brow.upper, mm(5)), place.at[1], 1e-9);
      }
    }
  });

  test.prop([anyFace(1)])("is the mirrored place on the mirrored face", (any) => {
    const image = mirror(any, FACE_MIDLINE) as typeof any;
    const place = meetGuide(guideLine(any, "right", "alare-through-exocanthion"), any.right.brow);
    const mirrored = meetGuide(
      guideLine(image, "left", "alare-through-exocanthion"),
      image.left.brow,
    );
    expectClose(mirrored?.extended, place?.extended, 0);
    if (place !== undefined) expectClose(mirrored?.at, mirror(place.at, FACE_MIDLINE), 1e-9);
  });
});
