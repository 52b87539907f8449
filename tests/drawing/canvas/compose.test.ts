import { describe, expect, it } from "vitest";
import { brushOf } from "../../../src/drawing/canvas/brush.js";
import { type Composition, compose, type Crowding } from "../../../src/drawing/canvas/compose.js";
import type { ColouredLabel } from "../../../src/drawing/canvas/layer.js";
import { uprightView } from "../../../src/drawing/canvas/view.js";

const brush = brushOf(uprightView([0, 0], 1), {});
const TEXT = "25.3 ± 0.2 mm";

/** One length in a box as wide and high as given, around which only what is far from it is free. */
function composed(width: number, height: number, crowding: Crowding): Composition {
  const one: ColouredLabel = {
    text: TEXT,
    at: [width / 2, height / 2],
    towards: [[0, -1]],
    size: 3,
    gap: 1,
    yields: "key",
    colour: "black",
  };
  const closed = [{ x: 0, y: height / 2 - 17, width, height: 34 }];
  return compose(
    [{ elements: [], labels: [one], closed }],
    [],
    { x: 0, y: 0, width, height },
    brush,
    crowding,
  );
}

describe("a length that finds no place near", () => {
  const at = { isOnScreen: true };

  it("is led farther where no legend can explain a key", () => {
    const { unplaced, keyed, elements } = composed(60, 60, at);
    expect([unplaced, keyed]).toEqual([[], []]);
    expect(JSON.stringify(elements)).toContain(TEXT);
    expect(JSON.stringify(elements)).toContain("leader");
  });

  it("gives way to a key, which is led as far as it takes", () => {
    const { unplaced, keyed, elements } = composed(60, 60, { ...at, keysFrom: 1 });
    expect([unplaced, keyed]).toEqual([[], [{ key: "L1", text: TEXT }]]);
    expect(JSON.stringify(elements)).not.toContain(TEXT);
  });

  it.each([0, 1])(
    "is said not to be written where a key finds no place either: keys from %s",
    (keysFrom) => {
      const { unplaced } = composed(60, 34, { ...at, keysFrom });
      expect(unplaced).toEqual([TEXT]);
    },
  );
});
