/** Of choices weighed. */
export const WEIGHING = {
  "same-landmarks":
    "All choices are weighed on the same landmarks, whose errors every row shares: decisions look at the values alone.",
  order:
    "In order: choices that keep what was demanded, those ruled out, those without a solution; among each, brows with fewer findings in their own shape come first, then fewer findings in all (space over the lids, dots far from the hair), then fewer tails that turn up, ending above the lower arch, then fewer guides through landmarks that are only approximated, then fewer distances, heights and thicknesses in which the sides differ by more than the tolerance, then smaller mean moves from the brows that were given, then smaller greatest ones, both as far as these are known well enough to tell them apart, then the order given.",
  "artist-decides": "The order is a rule, not a judgement: the artist decides.",
  moves:
    "Moves dots by {mean:1mm} on average, most the {dot:dots} of the {side:sides} brow, by {greatest:1mm}.",
  areas: "Removes {hair:mm2} of hair and fills {skin:mm2} of skin.",
  "areas-unknown":
    "How much hair is removed and skin filled is not known: it takes both borders of the hair.",
  "sides-even": "Leaves no difference between the sides above tolerance.",
  "sides-differ": "Leaves the sides different above tolerance: {measures}.",
  "lid-room":
    "Opens the space between upper lid and brow by {right:1mm} (right) and {left:1mm} (left); closes it where negative.",
  "lid-room-unknown":
    "What happens to the space between upper lid and brow is not known: pupil, upper lid or lower border are missing.",
  "front-share":
    "Front share {right:shares} (right) and {left:shares} (left), held against {asked:shares}.",
  "front-share-measured":
    "Front share {right:shares} (right) and {left:shares} (left), as it comes: none was asked for.",
  "lid-room-closes":
    "Ruled out: it closes the space between upper lid and brow on the {side:sides} by {by:1mm}, at most {most:mm} were allowed.",
  "no-solution": "Cannot be planned on this face: {why}.",
  "why-missing": ({ field }: { readonly field: readonly unknown[] }): string =>
    field.length === 1 ? "{field} is missing" : "{field} are missing",
  "why-range": "{field} is {value}, may be {from} to {to}",
  "why-value": "{field} cannot be {value}",
  "why-no-place": "{field} finds no place",
  "why-pins": "{field} finds no place among the pins",
  "why-over-eye": "the {side:sides} brow runs over the eye",
  differs: "{measure:measures} ({difference:1mm})",
  "differs-in-share": "{measure:measures} ({difference:3})",
  "landmark-needed": "{landmark:landmarkPaths}",
  choice: "{choice:choices}",
  "choice-of-shape": "{shape:shapes}",
  "choice-of-thickness": "thickness at the {station:stations}",
  "dot-of-side": "{side:sides} {dot:dots}",
  "pin-number": "pin {number}",
} as const;
