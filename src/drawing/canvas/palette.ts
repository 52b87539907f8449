/** How a picture is coloured: for light or dark surroundings, or in black alone. */
export type Theme = "light" | "dark" | "monochrome";

/** Colours of one theme, as `#rrggbb`. */
export interface Palette {
  /** Behind everything, and around strokes and letters that lie on a photo. */
  readonly paper: string;
  readonly ink: string;
  /** Letters of the second rank, thin rules of tables. */
  readonly quiet: string;
  readonly strokes: Readonly<Record<StrokeRole, string>>;
}

/**
 * The colours of each theme.
 *
 * Searched for, not picked: within one theme every two of the brow's, the midline's and the guides'
 * colours stay at least 0.14 apart in OKLab for readers without red, green or blue cones, and all
 * have a contrast of at least 3 with the paper. In grey some of them meet: there, dashes and
 * markers tell them apart.
 */
export const PALETTES: Readonly<Record<Theme, Palette>> = {
  light: {
    paper: "#ffffff",
    ink: "#1d2026",
    quiet: "#5a616d",
    strokes: {
      natural: "#cf6e14",
      guess: "#5a616d",
      planned: "#1938a2",
      capture: "#1938a2",
      midline: "#2b2622",
      start: "#a02df0",
      arch: "#a73716",
      tail: "#138296",
      ruler: "#1d2026",
      landmark: "#5a616d",
      move: "#1d2026",
      remove: "#cf6e14",
      fill: "#1938a2",
      correction: "#1d2026",
      finding: "#1d2026",
    },
  },
  dark: {
    paper: "#14171c",
    ink: "#f2f4f7",
    quiet: "#aab2bf",
    strokes: {
      natural: "#feb224",
      guess: "#aab2bf",
      planned: "#9fb1f5",
      capture: "#9fb1f5",
      midline: "#e5ece7",
      start: "#b455ff",
      arch: "#ff3a24",
      tail: "#448c91",
      ruler: "#f2f4f7",
      landmark: "#aab2bf",
      move: "#f2f4f7",
      remove: "#feb224",
      fill: "#9fb1f5",
      correction: "#f2f4f7",
      finding: "#f2f4f7",
    },
  },
  monochrome: {
    paper: "#ffffff",
    ink: "#000000",
    quiet: "#3a3a3a",
    strokes: {
      natural: "#5c5c5c",
      guess: "#5c5c5c",
      planned: "#000000",
      capture: "#000000",
      midline: "#000000",
      start: "#000000",
      arch: "#000000",
      tail: "#000000",
      ruler: "#000000",
      landmark: "#3a3a3a",
      move: "#000000",
      remove: "#5c5c5c",
      fill: "#000000",
      correction: "#000000",
      finding: "#000000",
    },
  },
};

export type MarkerShape = "circle" | "square" | "triangle" | "diamond" | "cross" | "saltire";

/** What tells strokes apart without colour. Widths and dashes are in steps, see `View`. */
export interface StrokeStyle {
  readonly width: number;
  /** Dash and gap lengths, taken in turn; none: a solid line. */
  readonly dash: readonly number[];
}

export const STROKES = {
  planned: { width: 0.55, dash: [] },
  capture: { width: 0.55, dash: [] },
  natural: { width: 0.45, dash: [0.9, 0.9] },
  guess: { width: 0.3, dash: [0.3, 0.6] },
  midline: { width: 0.35, dash: [5, 1.2, 0.7, 1.2] },
  start: { width: 0.4, dash: [3, 1.2] },
  arch: { width: 0.4, dash: [1.6, 1] },
  tail: { width: 0.4, dash: [4.5, 1, 1, 1, 1, 1] },
  ruler: { width: 0.25, dash: [] },
  landmark: { width: 0.3, dash: [] },
  move: { width: 0.35, dash: [] },
  remove: { width: 0.28, dash: [] },
  fill: { width: 0.28, dash: [0.9, 0.5] },
  // No shorter than an arrow's head, which stays whole.
  correction: { width: 0.45, dash: [2, 0.6] },
  finding: { width: 0.45, dash: [] },
} as const;

/** What a stroke stands for. */
export type StrokeRole = keyof typeof STROKES;

/** The shape of the dots that belong to each mark, the same in every theme. */
export const MARKERS: Readonly<
  Record<"start" | "body" | "arch" | "tail" | "landmark" | "drawn", MarkerShape>
> = {
  start: "square",
  body: "circle",
  arch: "triangle",
  tail: "diamond",
  landmark: "cross",
  drawn: "saltire",
};
