import type { SvgElement } from "../canvas/svg.js";

/** A part of a printed page that is as wide as the page's room and stays in one piece. */
export interface Block {
  readonly height: number;
  readonly drawnAt: (left: number, top: number) => readonly SvgElement[];
  /** Whether it belongs on the page of what follows, as a heading does. */
  readonly leads?: boolean;
  /** What is drawn once more above it where it begins a page: the head of its table. */
  readonly head?: Block;
}

export function gap(height: number): Block {
  return { height, drawnAt: () => [] };
}

/** Blocks as one that is not torn apart, unless no page could hold it. */
export function together(blocks: readonly Block[], pageHeight: number): readonly Block[] {
  const height = heightOf(blocks);
  if (height > pageHeight) return blocks;
  return [{ height, drawnAt: (left, top) => drawnBlocks(blocks, left, top) }];
}

/** Blocks on as few pages as hold them in their order; a heading goes with what it heads. */
export function paginated(blocks: readonly Block[], height: number): readonly (readonly Block[])[] {
  const pages: Block[][] = [[]];
  let used = 0;
  for (const part of withTheirHeadings(blocks)) {
    const needed = heightOf(part);
    const page = pages[pages.length - 1] as Block[];
    if (page.length > 0 && used + needed > height) {
      const head = part[0]?.head;
      const whole = head === undefined ? [...part] : [head, ...part];
      pages.push(whole);
      used = heightOf(whole);
    } else {
      page.push(...part);
      used += needed;
    }
  }
  return pages;
}

export function heightOf(blocks: readonly Block[]): number {
  return blocks.reduce((sum, { height }) => sum + height, 0);
}

export function drawnBlocks(
  blocks: readonly Block[],
  left: number,
  top: number,
): readonly SvgElement[] {
  let y = top;
  return blocks.flatMap(({ height, drawnAt }) => {
    const drawn = drawnAt(left, y);
    y += height;
    return drawn;
  });
}

function withTheirHeadings(blocks: readonly Block[]): readonly (readonly Block[])[] {
  const parts: Block[][] = [];
  let open: Block[] = [];
  for (const block of blocks) {
    open.push(block);
    if (block.leads !== true) {
      parts.push(open);
      open = [];
    }
  }
  return open.length > 0 ? [...parts, open] : parts;
}
