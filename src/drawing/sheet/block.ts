import type { SvgElement } from "../canvas/svg.js";

/** A part of a printed page that is as wide as the page's room and stays in one piece. */
export interface Block {
  readonly height: number;
  readonly drawnAt: (left: number, top: number) => readonly SvgElement[];
  /** Whether it belongs on the page of what follows, as a heading does. */
  readonly leads?: boolean;
  /** What is drawn once more above it where it begins a page: the head of its table. */
  readonly head?: Block;
  /** What it may be torn into where that saves a page, or a page that would be nearly blank. */
  readonly torn?: readonly Block[];
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

/** The same, but torn apart where that saves a page or one that would be nearly blank. */
export function togetherIfFree(blocks: readonly Block[], pageHeight: number): readonly Block[] {
  const [whole, ...others] = together(blocks, pageHeight);
  return whole === undefined || others.length > 0 ? blocks : [{ ...whole, torn: blocks }];
}

/** Of the room of a page: what has less on it is nearly blank. */
const NEARLY_BLANK = 0.25;

/**
 * Blocks on as few pages as hold them in their order; a heading goes with what it heads. The last page takes from
 * the one before rather than stay nearly blank.
 */
export function paginated(blocks: readonly Block[], height: number): readonly (readonly Block[])[] {
  const whole = onPages(blocks, height);
  const torn = onPages(
    blocks.flatMap((block) => block.torn ?? [block]),
    height,
  );
  if (torn.length < whole.length) return torn;
  const least = emptiest(whole);
  const mends = torn.length === whole.length && least < NEARLY_BLANK * height;
  return mends && emptiest(torn) > least ? torn : whole;
}

function emptiest(pages: readonly (readonly Block[])[]): number {
  return Math.min(...pages.map(heightOf));
}

type Part = readonly Block[];

function onPages(blocks: readonly Block[], height: number): readonly (readonly Block[])[] {
  const pages: Part[][] = [[]];
  for (const part of withTheirHeadings(blocks)) {
    const page = pages[pages.length - 1] as Part[];
    if (page.length > 0 && heightOf(pageOf([...page, part])) > height) pages.push([part]);
    else page.push(part);
  }
  return evenedAtTheEnd(pages, height).map(pageOf);
}

/** Parts as a page; where it begins within a table, the table's head stands above. */
function pageOf(parts: readonly Part[]): readonly Block[] {
  const head = parts[0]?.[0]?.head;
  return [...(head === undefined ? [] : [head]), ...parts.flat()];
}

/** The last page with as many parts of the one before as it takes not to be nearly blank. */
function evenedAtTheEnd(pages: readonly Part[][], height: number): readonly (readonly Part[])[] {
  const [before, last] = pages.slice(-2);
  if (before === undefined || last === undefined) return pages;
  let from = before.length;
  const heightFrom = (part: number): number => heightOf(pageOf([...before.slice(part), ...last]));
  while (from > 1 && heightFrom(from) < NEARLY_BLANK * height && heightFrom(from - 1) <= height) {
    from -= 1;
  }
  return [...pages.slice(0, -2), before.slice(0, from), [...before.slice(from), ...last]];
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
