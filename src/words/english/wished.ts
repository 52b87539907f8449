/** Of wishes, granted or held back. */
export const WISHED = {
  "wish-granted": "{wish:wishes} by {amount:1mm}: granted.",
  "wish-held": "{wish:wishes} by {amount:1mm}: {granted:1mm} granted, no more. {why}",
  "wish-at-guide": "The {side:sides} brow would leave its guides: the last one is {guide:rules}.",
  "wish-at-hair": "The {side:sides} brow would leave its guides and its hair at the {mark:marks}.",
  "wish-thin": "The {side:sides} brow would be thinner than {limit:mm} at its {station:stations}.",
  "wish-at-pin": "The {dot:dots} is pinned on the {side:sides}.",
} as const;
