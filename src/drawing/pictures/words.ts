/** Titles of pictures, where none is given. */
export const TITLES = {
  plan: "Brow map",
  choices: "Choices weighed",
  captures: "Captures of one face",
  strip: "Brows as they grow and as planned",
} as const;

/** Sentences for readers who do not see the picture. */
export const DESCRIPTION = {
  face: "A face from the front; right and left are the client’s own. Lengths are by ruler on the skin.",
  right:
    "Right brow as planned: start {start}, arch {arch} and tail end {tail} from the midline{lengths}.",
  left: "Left brow as planned: start {start}, arch {arch} and tail end {tail} from the midline{lengths}.",
  front: ", front {length}",
  tail: ", tail {length}",
  overlap:
    "On the {side}, {hair} mm² of hair lie outside the plan and {skin} mm² of skin inside it.",
  check: "The check of what was drawn says: {outcome}{corrections}.",
  captures:
    "Brows of one face in several captures; right and left are the client’s own. First the heights above the inner eye corners, then how they differ from those.",
  capture: "{name}: right {right}; left {left}.",
  unplaced: "Not written in the picture: {labels}.",
} as const;

/** What strokes, dots and areas of a picture mean. */
export const LEGEND = {
  planned: "planned brow",
  natural: "brow as it grows",
  midline: "midline",
  start: "start: {convention}",
  arch: "arch: {convention}",
  tail: "tail: {convention}",
  pinned: "where it is pinned",
  lengths: "front and tail, straight by ruler",
  landmark: "landmark",
  "stand-in": "landmark, approximated",
  "no-overlap": "{side} not known, without a lower border",
  hair: "hair outside the plan, to be removed, mm²: {areas}",
  skin: "skin inside the plan, to be filled, mm²: {areas}",
  drawn: "dot as drawn; the check says: {outcome}",
  correction: "from where it was drawn to its plan",
  undecided: "within or outside of the tolerance: not yet known",
  move: "move, numbered as below",
  level: "level of the inner eye corners; heights above it",
  "first-level": "level of the inner eye corners; heights of the first capture above it",
  capture: "this capture",
  "first-capture": "first capture: {name}",
  change: "+ higher, − lower than in the first capture, in mm ± standard uncertainty",
  doubt: "eye corners and nose do not fit the first capture",
} as const;

/** Over the panels of a strip. */
export const PANELS = {
  natural: "client’s {side}, as it grows",
  planned: "client’s {side}, as planned",
} as const;

/** Over the parts of a sheet. */
export const HEADINGS = {
  moves: "Moves, numbered as in the picture",
  pins: "Pinned dots, ringed in the picture",
  cautions: "Cautions",
  steps: "Step by step",
  reasons: "Why",
  check: "Check of what was drawn",
  readings: "Readings",
} as const;

/** What is filled in at the head of a sheet. */
export const FIELDS = { client: "Client", date: "Date", artist: "Artist" } as const;

/** How a sheet is to be read. */
export const ON_THE_SHEET = {
  "true-size":
    "Printed at true size as seen from the front. Skin turns away towards the temples, so a ruler on the skin reads more than one on this paper; it is not a stencil.",
  readings:
    "Millimetres, straight by ruler where nothing else is said, with standard uncertainties; heights are above the level of the inner eye corners. Decisions are about the planned brows: within, outside or undecided against the tolerance of each measure.",
  print:
    "Check the print with a real ruler: 0 to 100 here and 0 to 50 beside the face. If they differ, print again at 100 %, not fitted to the page.",
} as const;
