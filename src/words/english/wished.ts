/** Of wishes, granted or held back, and of areas of skin. */
export const WISHED = {
  "wish-granted": "{wish:wishes} by {amount:1mm}: granted.",
  "wish-held": "{wish:wishes} by {amount:1mm}: {granted:1mm} granted, no more. {why}",
  "wish-at-guide": "The {side:sides} brow would leave its guides: the last one is {guide:rules}.",
  "wish-at-hair": "The {side:sides} brow would leave its guides and its hair at the {mark:marks}.",
  "wish-thin": "The {side:sides} brow would be thinner than {limit:mm} at its {station:stations}.",
  "wish-at-pin": "The {dot:dots} is pinned on the {side:sides}.",
  "area-covered": "{name}: covered, its margin included.",
  "area-sticks-out":
    "{name}: {area:mm2} stick out of the planned brows, by {distance:1mm} at most, near the {side:sides} {dot:dots}. Whether pigment can be taken out is for licensed practice to judge.",
  "area-clear": "{name}: the planned brows stay off it and its margin.",
  "area-overlapped":
    "{name}: the planned brows overlap {area:mm2} of it, by {distance:1mm} at most, near the {side:sides} {dot:dots}. Whether pigment may go there is for licensed practice to judge.",
  "area-in-the-way": "{name}: keeps the brows from becoming wider.",
} as const;
