/** What to do, step by step. */
export const STEPS = {
  move: "{side} {dot}: {way}",
  "place-up": "{side} {dot}: place it {height} mm above the inner eye corners",
  "place-across": "{side} {dot}: place it {distance} mm from the midline",
  stay: "{side} {dot}: stays, neither {one} nor {other}",
  thickness: "{side} {station}: {thickness} mm thick, straight down",
  "thickness-unknown": "{side} {station}: straight down",
  "upper-border": "{side} upper border: join start, arch and tail end",
  "lower-border": "{side} lower border: join lower start, body, arch and tail end",
  again: "{side}: {from} to {to} again, upright and relaxed",
} as const;

/** Why, where it is no reason of the plan. */
export const WHY = {
  joined: "The border runs through its dots.",
  checked: "Brows move when the client lies down or raises them; what follows is permanent.",
} as const;

/** What a ruler is laid to. */
export const RULED = {
  start: "start",
  "other-start": "{side} start",
  arch: "arch",
  "tail-end": "tail end",
  "outer-eye-corner": "outer eye corner",
  level: "level of the inner eye corners, square to the midline",
  "start-by-tape": "start, with a tape along the border",
  lid: "edge of the upper lid above the pupil",
  "lower-border": "lower border",
  upper: "upper {station}",
  lower: "lower {station}",
} as const;
