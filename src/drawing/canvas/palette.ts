/** How a picture is coloured: for light or dark surroundings, in black alone, or to lie over a photo or a video. */
export type Theme = "light" | "dark" | "monochrome" | "transparent";

/** Colours of one theme, as `#rrggbb`. */
export interface Palette {
  /** Around strokes and letters that lie on a photo, and inside hollow dots. */
  readonly paper: string;
  /** Behind everything: the paper, or nothing. */
  readonly backdrop: string;
  readonly ink: string;
  /** Letters of the second rank, thin rules of tables. */
  readonly quiet: string;
  readonly strokes: Readonly<Record<StrokeRole, string>>;
}

/** The palette of a few colours: what is done to hair or skin has theirs, and what is read or corrected is in ink. */
function paletteOf(
  [paper, ink, quiet]: readonly [paper: string, ink: string, quiet: string],
  [natural, planned, midline, start, arch, tail]: Colours,
  backdrop = paper,
): Palette {
  return {
    paper,
    backdrop,
    ink,
    quiet,
    strokes: {
      ...{ natural, planned, midline, start, arch, tail },
      guess: quiet,
      capture: planned,
      ruler: ink,
      landmark: quiet,
      move: ink,
      remove: natural,
      fill: planned,
      correction: ink,
      finding: ink,
    },
  };
}

type Colours = readonly [
  natural: string,
  planned: string,
  midline: string,
  start: string,
  arch: string,
  tail: string,
];

const ON_WHITE = ["#ffffff", "#1d2026", "#5a616d"] as const;
const DEEP: Colours = ["#cf6e14", "#1938a2", "#2b2622", "#a02df0", "#a73716", "#138296"];
const BRIGHT: Colours = ["#feb224", "#9fb1f5", "#e5ece7", "#b455ff", "#ff3a24", "#448c91"];
const BLACK = "#000000";

/**
 * The colours of each theme.
 *
 * Searched for, not picked: within one theme every two of the brow's, the midline's and the guides'
 * colours stay at least 0.14 apart in OKLab for readers without red, green or blue cones, and all
 * have a contrast of at least 3 with the paper, those of letters 4.5. In grey some of them meet: there, dashes and
 * markers tell them apart.
 */
export const PALETTES: Readonly<Record<Theme, Palette>> = {
  light: /* @__PURE__ */ paletteOf(ON_WHITE, DEEP),
  dark: /* @__PURE__ */ paletteOf(["#14171c", "#f2f4f7", "#aab2bf"], BRIGHT),
  monochrome: /* @__PURE__ */ paletteOf(
    ["#ffffff", BLACK, "#3a3a3a"],
    ["#5c5c5c", BLACK, BLACK, BLACK, BLACK, BLACK],
  ),
  transparent: /* @__PURE__ */ paletteOf(ON_WHITE, DEEP, "none"),
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
