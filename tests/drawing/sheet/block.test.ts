import { describe, expect, it } from "vitest";
import { type Block, gap, paginated } from "../../../src/drawing/sheet/block.js";

/** A block that can be told from others by its height. */
const row = (height: number, more: Partial<Block> = {}): Block => ({ ...gap(height), ...more });

const heights = (pages: readonly (readonly Block[])[]): readonly (readonly number[])[] =>
  pages.map((page) => page.map(({ height }) => height));

describe("paginated", () => {
  it("fills pages in order", () => {
    expect(heights(paginated([row(6), row(5), row(4), row(3)], 10))).toEqual([[6], [5, 4], [3]]);
  });

  it("keeps what leads with what follows", () => {
    const blocks = [row(6), row(1, { leads: true }), row(2, { leads: true }), row(3)];
    expect(heights(paginated(blocks, 10))).toEqual([[6], [1, 2, 3]]);
  });

  it("draws the head of a table again where a row begins a page", () => {
    const head = row(2, { leads: true });
    const rows = [4, 4.1, 4.2, 4.3].map((height) => row(height, { head }));
    expect(heights(paginated([head, ...rows], 12))).toEqual([
      [2, 4, 4.1],
      [2, 4.2, 4.3],
    ]);
  });
});
