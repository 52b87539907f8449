/** Sheets of paper: A4 (ISO 216) and US letter. */
export type Paper = "A4" | "letter";

/** Their sizes in millimetres, upright. */
export const PAPERS: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> =
  { A4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } };

/** What printers leave white, and a little more, in millimetres. */
export const PAPER_MARGIN = 12;

/** How wide what is printed may be. */
export function widthOn(paper: Paper): number {
  return PAPERS[paper].width - 2 * PAPER_MARGIN;
}
