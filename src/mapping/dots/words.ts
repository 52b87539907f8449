import type { CodeOf } from "../../units/internal.js";

export const REASON_CODES = [
  "lead-middle",
  "lead-side",
  "lead-side-by-measure",
  "levels-middle",
  "levels-side",
  "levels-held-back",
  "start-at-alare",
  "start-at-endocanthion-nose-wide",
  "start-at-endocanthion-stand-in",
  "start-at-endocanthion-nose-bent",
  "start-at-endocanthion-nose-deviates",
  "start-chosen",
  "arch-natural",
  "arch-moved-outward",
  "arch-moved-inward",
  "arch-flat",
  "arch-undetermined",
  "arch-chosen",
  "tail-at-guide",
  "thickness-natural",
  "thickness-chosen",
  "thickness-assumed",
  "border-extended",
  "guide-missed",
  "carried-by-measure",
  "pinned",
  "pins-break-levels",
  "pins-break-tail-heights",
  "pins-break-distances",
  "pins-break-thickness",
  "pins-break-share",
] as const;

/** Codes of the reasons that a plan gives. */
export type ReasonCode = CodeOf<typeof REASON_CODES, typeof REASONS>;

/** Which brow leads. */
export const LEAD_REASONS = {
  "lead-middle": "Neither brow leads: every dot lies half-way between what each side asks for.",
  "lead-side": "The {lead} brow leads: the other side mirrors its dots across the midline.",
  "lead-side-by-measure": "The {lead} brow leads: the other side follows it by measure.",
} as const;

/** Why start and arch are as high as they are. */
export const LEVEL_REASONS = {
  "levels-middle": "Heights of start and arch are evened half-way between the two brows.",
  "levels-side": "Heights of start and arch are those of the {levels} brow.",
  "levels-held-back":
    "Evening took no {dot} dot more than {limit:1} mm up or down from its own hair: the {higher} one stays {difference:1} mm higher.",
} as const;

/** Why a brow starts where it does. */
export const START_REASONS = {
  "start-at-alare":
    "Start above the nose wing: counted outward from the inner eye corner it lies at {right:1} mm (right) and {left:1} mm (left), neither beyond {limit} mm.",
  "start-at-endocanthion-nose-wide":
    "Start above the inner eye corner: counted outward from it the nose wing lies at {right:1} mm (right) and {left:1} mm (left), beyond {limit} mm on at least one side.",
  "start-at-endocanthion-stand-in":
    "Start above the inner eye corner: the nose wing is only approximated by a stand-in ({instead}).",
  "start-at-endocanthion-nose-bent":
    "Start above the inner eye corner: the nose is bent, so its wings do not tell where a brow starts.",
  "start-at-endocanthion-nose-deviates":
    "Start above the inner eye corner: the nose runs {angle:1}° off the midline (standard uncertainty {u:1}°), more than the {limit}° that others notice, so its wings do not tell where a brow starts.",
  "start-chosen": "Start as chosen: {place}.",
} as const;

/** Why a brow peaks where it does. */
export const ARCH_REASONS = {
  "arch-natural":
    "Arch where it grows on the {side} brow: {share:2} eye widths from the inner eye corner.",
  "arch-moved-outward":
    "Arch of the {side} brow moved outward along the border to the vertical of the {limit}: it grows {distance:1} mm nearer the nose.",
  "arch-moved-inward":
    "Arch of the {side} brow moved inward along the border to the vertical of the {limit}: it grows {distance:1} mm beyond it.",
  "arch-flat":
    "The {side} brow is flat (its border rises {rise:1} mm above the chord): it has no natural arch, so front and tail divide at {share:2} of the length by ruler.",
  "arch-undetermined":
    "Where the {side} brow arches is known only to ±{u:1} mm: front and tail divide at {share:2} of the length by ruler instead.",
  "arch-chosen": "Arch as chosen: {place}.",
} as const;

/** Why a brow ends where it does. */
export const TAIL_REASONS = {
  "tail-at-guide": "Tail end {guide}, {height}.",
} as const;

/** Why a brow is as thick as it is. */
export const THICKNESS_REASONS = {
  "thickness-natural":
    "Thickness as it grows: {start:1} mm at the start, {body:1} mm at the body, {arch:1} mm at the arch.",
  "thickness-chosen":
    "Thickness as chosen: {start:1} mm at the start, {body:1} mm at the body, {arch:1} mm at the arch.",
  "thickness-assumed":
    "Thickness of {start:1} mm at the start, {body:1} mm at the body and {arch:1} mm at the arch; assumed at {assumed}, where no lower border tells.",
} as const;

/** What happened on the way: at the borders, and by what was pinned. */
export const EVENT_REASONS = {
  "border-extended":
    "The {mark} guide misses the hair of the {side} brow: its border is extended along its end.",
  "guide-missed":
    "The {mark} guide meets the {side} brow nowhere, extended or not: the natural height of its {mark} is kept.",
  "carried-by-measure":
    "The {side} brow is carried by measure: from its own start, with the leading heights and ruler lengths. Its arch lies {arch:1} mm and its tail end {tail:1} mm farther out than mirrored (negative: nearer the midline).",
  pinned: "The {name} of the {side} brow stays where {by} fixed it{reason}.",
  "pins-break-levels":
    "Pins leave the {higher} {dot} dot {difference:1} mm higher, more than {limit} mm.",
  "pins-break-tail-heights":
    "Pins leave the {higher} tail end {difference:1} mm higher, more than {limit} mm.",
  "pins-break-distances":
    "Pins leave the {farther} {dot} dot {difference:1} mm farther from the midline, more than {limit} mm.",
  "pins-break-thickness":
    "Pins leave the {thicker} brow {difference:1} mm thicker at the {station}, more than {limit} mm.",
  "pins-break-share":
    "Pins break the front share: that of the {side} brow is {share:2}, asked for was {asked:2} ± {limit:2}.",
} as const;

/** Why the dots of a plan lie where they do. */
export const REASONS: typeof LEAD_REASONS &
  typeof LEVEL_REASONS &
  typeof START_REASONS &
  typeof ARCH_REASONS &
  typeof TAIL_REASONS &
  typeof THICKNESS_REASONS &
  typeof EVENT_REASONS = /* @__PURE__ */ (() => ({
  ...LEAD_REASONS,
  ...LEVEL_REASONS,
  ...START_REASONS,
  ...ARCH_REASONS,
  ...TAIL_REASONS,
  ...THICKNESS_REASONS,
  ...EVENT_REASONS,
}))();

/** The verticals between which a natural arch stays, by what they run through. */
export const ARCH_LIMITS = {
  "lateral-limbus-vertical": "outer edge of the iris",
  "eye-width-share": "outer edge of the iris (taken at {share} eye widths)",
  "exocanthion-vertical": "outer eye corner",
} as const;

/** Who pinned a dot, where nobody is named. */
export const THE_ARTIST = "the artist";
