/** Of what comes after the map. */
export const VISITS = {
  "skin-moved": "{side:sides} {dot:dots}: its skin has moved {ways} against eye corners and nose.",
  "skin-stayed":
    "{side:sides} brow: no dot has moved against eye corners and nose by more than twice its uncertainty.",
  "skin-not-seen":
    "{side:sides} brow: it is not seen in this capture, so how far its skin has moved is not known; its dots stand where eye corners and nose put them.",
  "skin-guessed":
    "{side:sides} brow: a detector's guess at it is no hair, so how far its skin has moved is not known; its dots stand where eye corners and nose put them.",
  "carried-check-upright":
    "These places hold for this posture only. Check every distance again upright and relaxed before pigment goes in; what follows is permanent.",
  "result-too-early": ({ weeks }: { readonly weeks: number }): string =>
    `{weeks} week${weeks === 1 ? "" : "s"} after the work the skin still heals, and colour and edges change: what a touch-up would fill shows at {least} to {most} weeks.`,
  "result-spread":
    "{side:sides} brow: {area:mm2} (± {u:mm2}) lie outside the plan. Filling does not mend that; whether pigment can be taken out is for licensed practice to judge.",
  "result-areas-unknown":
    "{side:sides} brow: without its lower border nothing is known of its area and thickness.",
  "touch-up-practice":
    "Whether and when skin may be worked on again is for licensed practice to judge; local codes come first.",
  "fill-upper":
    "{side:sides}, from {from:dots} to {to:dots}: fill up to the upper border, by {gap:1mm} at most, {area:mm2}.",
  "fill-lower":
    "{side:sides}, from {from:dots} to {to:dots}: fill down to the lower border, by {gap:1mm} at most, {area:mm2}.",
  "fill-end":
    "{side:sides}, from {from:dots} to {to:dots}: fill the end, missing over {gap:1mm}, {area:mm2}.",
  "visit-undated": "Visit {visit} has no date.",
  "visit-out-of-order": "Visit {visit} is dated {date}, before an earlier one of {before}.",
  "visit-replays-differently":
    "Visit {visit}: what it was made from gives another plan than the one on record, as with another version of this library.",
  "visit-not-replayed": "Visit {visit}: what it was made from gives no plan. {refusal}",
  "visit-face-differs": "Visit {visit} may be of another face, or of other landmarks. {finding}",
  "visit-not-agreed": "Visit {visit}: nothing is on record as agreed.",
} as const;
