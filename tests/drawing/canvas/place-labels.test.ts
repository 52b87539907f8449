import { test } from "@fast-check/vitest";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Box,
  clippedTo,
  isWithin,
  overlap,
  type Spot,
  type Stretch,
} from "../../../src/drawing/canvas/box.js";
import type { Label } from "../../../src/drawing/canvas/label.js";
import { placeLabels } from "../../../src/drawing/canvas/place-labels.js";

const bounds: Box = { x: 0, y: 0, width: 400, height: 300 };
const up: Spot = [0, -1];
const down: Spot = [0, 1];

function label(text: string, at: Spot, towards: readonly Spot[] = [up, down]): Label {
  return { text, at, towards, size: 10, gap: 4 };
}

describe("placeLabels", () => {
  it("takes the first direction where it is free", () => {
    const { placed } = placeLabels([label("arch", [200, 150])], {
      bounds,
      closed: [],
      barred: [],
      strokes: [],
    });
    const box = placed[0]?.box as Box;
    expect(box.y + box.height).toBeCloseTo(146);
    expect(box.x + box.width / 2).toBeCloseTo(200);
    expect(placed[0]?.leader).toBeUndefined();
  });

  it("turns to the next direction before it covers an eye", () => {
    const eye = { x: 150, y: 100, width: 100, height: 48 };
    const { placed } = placeLabels([label("arch", [200, 150])], {
      bounds,
      closed: [eye],
      barred: [],
      strokes: [],
    });
    expect(placed[0]?.box.y).toBeCloseTo(154);
  });

  it("would rather turn than lie on a stroke", () => {
    const { placed } = placeLabels([label("arch", [200, 150])], {
      bounds,
      closed: [],
      barred: [],
      strokes: [{ from: [0, 140], to: [400, 140] }],
    });
    expect(placed[0]?.box.y).toBeCloseTo(154);
  });

  it("stands farther away rather than on a stroke where it is to stay clear of them", () => {
    const strokes = Array.from({ length: 20 }, (_, index): Stretch => ({
      from: [0, 90 + 6 * index],
      to: [400, 90 + 6 * index],
    }));
    const scene = { bounds, closed: [], barred: [], strokes };
    const over = placeLabels([label("7", [200, 150])], scene).placed[0]?.box as Box;
    expect(strokes.some((stroke) => clippedTo(over, stroke) !== undefined)).toBe(true);
    const clear = { ...label("7", [200, 150]), clear: true };
    const box = placeLabels([clear], scene).placed[0]?.box as Box;
    expect(strokes.some((stroke) => clippedTo(box, stroke) !== undefined)).toBe(false);
  });

  it("leads to a label away from a stroke rather than across it", () => {
    const at: Spot = [200, 150];
    const closed = [{ x: 0, y: 136, width: 400, height: 28 }];
    const leaderTo = (strokes: readonly Stretch[]): Spot | undefined =>
      placeLabels([label("7", at)], { bounds, closed, barred: [], strokes }).placed[0]?.leader?.to;
    expect(leaderTo([])?.[1]).toBeLessThan(136);
    expect(leaderTo([{ from: [0, 140], to: [400, 140] }])?.[1]).toBeGreaterThan(164);
  });

  it("leads across a stroke rather than across the border of a brow", () => {
    const at: Spot = [200, 150];
    const closed = [{ x: 0, y: 136, width: 400, height: 28 }];
    const [above, below] = [140, 160].map((y): Stretch => ({ from: [0, y], to: [400, y] })) as [
      Stretch,
      Stretch,
    ];
    const leaderTo = (borders: readonly Stretch[]): Spot | undefined =>
      placeLabels([label("7", at)], {
        ...{ bounds, closed, barred: [], borders },
        strokes: [above, below],
      }).placed[0]?.leader?.to;
    expect(leaderTo([])?.[1]).toBeLessThan(136);
    expect(leaderTo([above])?.[1]).toBeGreaterThan(164);
  });

  it("makes way for a label that would be led far", () => {
    // Room for one label above, and for the other one beneath as well.
    const closed = [
      { x: 0, y: 0, width: 400, height: 120 },
      { x: 0, y: 155, width: 189, height: 145 },
      { x: 211, y: 155, width: 189, height: 145 },
    ];
    const easy = label("A", [200, 150]);
    const hard = label("above", [200, 150], [up]);
    const scene = { bounds, closed, barred: [], strokes: [] };
    for (const labels of [
      [easy, hard],
      [hard, easy],
    ]) {
      const { placed, homeless } = placeLabels(labels, scene);
      expect(homeless).toEqual([]);
      expect(placed.map(({ label: { text } }) => text)).toEqual(labels.map(({ text }) => text));
      expect(placed.map(({ leader }) => leader)).toEqual([undefined, undefined]);
    }
  });

  test.prop([
    fc.array(fc.tuple(fc.integer({ min: 0, max: 380 }), fc.integer({ min: 0, max: 280 })), {
      minLength: 4,
      maxLength: 12,
    }),
    fc.array(fc.tuple(fc.integer({ min: 60, max: 340 }), fc.integer({ min: 20, max: 200 })), {
      minLength: 2,
      maxLength: 6,
    }),
  ])("places headings before all other labels, however they fare", (corners, spots) => {
    const closed = [
      { x: 0, y: 0, width: 400, height: 90 },
      ...corners.map(([x, y]) => ({ x, y, width: 90, height: 50 })),
    ];
    const scene = { bounds, closed, barred: [], strokes: [] };
    const headings = [label("client’s right", [200, 5], [down])];
    const headingOf = (others: readonly Label[]): Box | undefined => {
      const { placed } = placeLabels([...headings, ...others], scene, 1);
      return placed.find(({ label: { text } }) => text === "client’s right")?.box;
    };
    const others = spots.map((at) => label("planned", at));
    // Others that take no room, and are content wherever they stand.
    const small = others.map((one) => ({ ...one, text: "", size: 0.01, clear: true }));
    expect(headingOf(others)).toEqual(headingOf(small));
  });

  it("takes a label that need not stay clear as one that says nothing of it", () => {
    const closed = [
      { x: 0, y: 0, width: 400, height: 120 },
      { x: 0, y: 155, width: 189, height: 145 },
      { x: 211, y: 155, width: 189, height: 145 },
    ];
    const strokes = Array.from({ length: 20 }, (_, index): Stretch => ({
      from: [0, 90 + 6 * index],
      to: [400, 90 + 6 * index],
    }));
    const scene = { bounds, closed, barred: [], strokes };
    const labels = [label("A", [200, 150]), label("above", [200, 150], [up])];
    const boxes = (given: readonly Label[]): readonly Box[] =>
      placeLabels(given, scene).placed.map(({ box }) => box);
    expect(boxes(labels.map((one) => ({ ...one, clear: false })))).toEqual(boxes(labels));
  });

  it("leaves room to a barred line, and crosses none with a leader", () => {
    const barred = [{ from: [0, 140], to: [400, 140] }] as const;
    const below = { x: 100, y: 150.5, width: 200, height: 149 };
    const surroundings = { bounds, closed: [below], barred, strokes: [] };
    const onLine = placeLabels([label("25.3 mm", [200, 140])], surroundings).placed[0];
    expect((onLine?.box.y ?? NaN) + (onLine?.box.height ?? NaN)).toBeCloseTo(136);
    const beneath = placeLabels([label("tail", [200, 150])], surroundings);
    for (const { box, leader } of beneath.placed) {
      expect(box.y).toBeGreaterThan(140);
      expect(leader?.to[1] ?? 150).toBeGreaterThan(140);
    }
    expect(beneath.placed).toHaveLength(1);
  });

  it("slides along what it names before it hides the place of another label", () => {
    const along: Label = { ...label("25.3 mm", [200, 150], [up]), orAt: [[260, 150]] };
    const other = label("tail", [195, 140]);
    const scene = { bounds, closed: [], barred: [], strokes: [] };
    expect(placeLabels([along], scene).placed[0]?.label.at).toEqual([200, 150]);
    expect(placeLabels([along, other], scene).placed[0]?.label.at).toEqual([260, 150]);
  });

  it("draws a leader to a label that had to go far", () => {
    const at: Spot = [200, 150];
    const { placed } = placeLabels([label("arch", at)], {
      bounds,
      closed: [{ x: 140, y: 110, width: 120, height: 80 }],
      barred: [],
      strokes: [],
    });
    expect(placed[0]?.leader?.from).toEqual(at);
    expect(overlap(placed[0]?.box as Box, { x: 140, y: 110, width: 120, height: 80 })).toBe(false);
  });

  it("says which labels found no room", () => {
    const homeless = label("wide ".repeat(40), [5, 5]);
    expect(
      placeLabels([homeless, label("arch", [200, 150])], {
        bounds,
        closed: [],
        barred: [],
        strokes: [],
      }),
    ).toMatchObject({ homeless: [homeless], placed: [{ label: { text: "arch" } }] });
  });

  const anySpot = fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 300 }));
  const anyLabel = fc
    .record({ text: fc.string({ minLength: 1, maxLength: 14 }), at: anySpot })
    .map(({ text, at }) => label(text, at));

  test.prop([fc.array(anyLabel, { maxLength: 24 }), fc.array(anySpot, { maxLength: 6 })])(
    "never lets two labels touch, crosses none with another's leader, and stays inside",
    (labels, corners) => {
      const closed = corners.map(([x, y]) => ({ x, y, width: 30, height: 20 }));
      const { placed, homeless } = placeLabels(labels, { bounds, closed, barred: [], strokes: [] });
      expect(placed.length + homeless.length).toBe(labels.length);
      for (const [index, one] of placed.entries()) {
        expect(isWithin(one.box, bounds)).toBe(true);
        expect(closed.some((box) => overlap(box, one.box))).toBe(false);
        for (const other of placed.slice(index + 1)) {
          expect(overlap(one.box, other.box)).toBe(false);
          if (one.leader !== undefined) expect(clippedTo(other.box, one.leader)).toBeUndefined();
          if (other.leader !== undefined) expect(clippedTo(one.box, other.leader)).toBeUndefined();
        }
      }
    },
  );

  test.prop([fc.array(anyLabel, { maxLength: 12 })])("is the same every time", (labels) => {
    const surroundings = { bounds, closed: [], barred: [], strokes: [] };
    expect(placeLabels(labels, surroundings)).toEqual(placeLabels(labels, surroundings));
  });
});
