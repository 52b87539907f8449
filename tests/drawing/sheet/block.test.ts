import { describe, expect, it } from "vitest";
import { type Block, gap, paginated, togetherIfFree } from "../../../src/drawing/sheet/block.js";

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

  it("lets the last page take from the one before rather than stay nearly blank", () => {
    const head = row(1, { leads: true });
    const rows = [2, 2.1, 2.2, 1.3].map((height) => row(height, { head }));
    expect(heights(paginated([head, ...rows], 8))).toEqual([
      [1, 2, 2.1, 2.2],
      [1, 1.3],
    ]);
    expect(heights(paginated([head, ...rows], 9.5))).toEqual([[1, 2, 2.1, 2.2, 1.3]]);
    expect(heights(paginated([row(4), row(3), row(1)], 7.5))).toEqual([[4], [3, 1]]);
  });

  it("leaves to the page before its first part, and no page more than it holds", () => {
    expect(heights(paginated([row(9.5), row(1)], 10))).toEqual([[9.5], [1]]);
    expect(heights(paginated([row(0.5), row(9.4), row(1)], 10))).toEqual([[0.5, 9.4], [1]]);
  });
});

describe("togetherIfFree", () => {
  const rows = [row(3), row(2), row(3)];

  it("stays in one piece where that takes no page more", () => {
    expect(heights(paginated([row(6), ...togetherIfFree(rows, 10)], 10))).toEqual([[6], [8]]);
  });

  it("is torn where that saves a page", () => {
    const blocks = [row(5), ...togetherIfFree(rows, 10), row(7)];
    expect(heights(paginated(blocks, 10))).toEqual([
      [5, 3, 2],
      [3, 7],
    ]);
  });

  it("is torn where a page would be nearly blank", () => {
    expect(heights(paginated([row(2), ...togetherIfFree([row(5), row(4)], 10)], 10))).toEqual([
      [2, 5],
      [4],
    ]);
  });
});
