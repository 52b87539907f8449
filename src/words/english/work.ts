/** Of the work, step by step. */
export const WORK = {
  "step-thickness": "{side:sides} {station:stations}: {thickness:mm} thick, straight down",
  "step-borders":
    "{side:sides}: join start, arch and tail end above; lower start, body, arch and tail end below. Then upright and relaxed, every distance again",
  "checked-upright":
    "Brows move when the client lies down or raises them; what follows is permanent.",
  "laid-between": "{from} → {to}",
  "laid-level":
    "one ruler across both brows, {dot:dots} to {dot:dots}: level, square to the midline",
  "laid-slanting":
    "one ruler across both brows, {dot:dots} to {dot:dots}: {side:sides} {by:mm} higher",
  "at-start": "start",
  "at-body": "body",
  "at-arch": "arch",
  "at-tail-end": "tail end",
  "at-lower-start": "lower start",
  "at-lower-body": "lower body",
  "at-lower-arch": "lower arch",
  "at-other-start": "{side:sides} start",
  "at-inner-eye-corner": "inner eye corner",
  "at-outer-eye-corner": "outer eye corner",
  "at-start-by-tape": "start, with a tape along the border",
  "at-lid": "edge of the upper lid above the pupil",
  "at-lower-border": "lower border",
  "mark-midline": "midline",
  "mark-landmark": "{side:sides} {landmark:landmarks}",
  "mark-dot": "{side:sides} {dot:dots}",
  "thread-midline": "along the midline",
  "thread-across": "across both brows at the {dot:dots}",
  "thread-guide": "{side:sides} {mark:marks} {rule:rules}",
  "thread-border": "{side:sides} from {from:dots} to {to:dots}",
} as const;
