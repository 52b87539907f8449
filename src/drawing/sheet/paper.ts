import { requireWord } from "../../units/internal.js";

/** Sheets of paper: A4 (ISO 216) and US letter. */
export type Paper = "A4" | "letter";

/** Their sizes in millimetres, upright. */
export const PAPERS: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> =
  { A4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } };

/** What printers leave white, and a little more, in millimetres. */
export const PAPER_MARGIN = 12;

/** Refuses an unknown paper. */
export function requirePaper(where: string, paper: Paper | undefined): void {
  requireWord(where, "paper", paper, Object.keys(PAPERS));
}
