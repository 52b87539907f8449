/** Of why dots lie where they do. */
export const REASONS = {
  "lead-middle": "Neither brow leads: every dot lies half-way between what each side asks for.",
  "lead-side": "The {lead:sides} brow leads: the other side mirrors its dots across the midline.",
  "lead-side-by-measure": "The {lead:sides} brow leads: the other side follows it by measure.",
  "levels-middle": "Heights of start and arch are evened half-way between the two brows.",
  "levels-side": "Heights of start and arch are those of the {levels:sides} brow.",
  "levels-held-back":
    "Evening the sides took no {dot:dots} dot more than {limit:1mm} up or down from its own border in the same place: the {higher:sides} one stays {difference:1mm} higher.",
  "levels-left":
    "The sides then differ by up to {most:1mm} in height: clients notice about {clients:1mm} on themselves, others about {others:1mm}.",
  "start-at-alare":
    "Start above the nose wing: counted outward from the inner eye corner it lies at {right:1mm} (right) and {left:1mm} (left), neither beyond {limit:mm}.",
  "start-at-endocanthion-nose-wide":
    "Start above the inner eye corner: counted outward from it the nose wing lies at {right:1mm} (right) and {left:1mm} (left), beyond {limit:mm} on at least one side.",
  "start-at-endocanthion-stand-in":
    "Start above the inner eye corner: the nose wing is only approximated ({instead:standIns}).",
  "start-at-endocanthion-nose-bent":
    "Start above the inner eye corner: the nose is bent, so its wings do not tell where a brow starts.",
  "start-at-endocanthion-nose-deviates":
    "Start above the inner eye corner: the nose runs {angle:1}° off the midline (standard uncertainty {u:1}°), more than the {limit}° that others notice, so its wings do not tell where a brow starts.",
  "start-chosen": "Start as chosen: {convention:rules}.",
  "hair-not-seen":
    "In place of hair, the {side:sides} brow has {instead:standIns}. Guides and the ruler place its dots.",
  "arch-natural":
    "Arch where it grows on the {side:sides} brow, as far as that is seen (±{u:1mm}): {share:2} eye widths from the inner eye corner.",
  "arch-moved-outward":
    "Arch of the {side:sides} brow moved outward along the border to the vertical of the {limit:archLimits}: it grows {distance:1mm} (±{u:1mm}) nearer the nose.",
  "arch-moved-inward":
    "Arch of the {side:sides} brow moved inward along the border to the vertical of the {limit:archLimits}: it grows {distance:1mm} (±{u:1mm}) beyond it.",
  "arch-flat":
    "The {side:sides} brow is flat (its border rises {rise:1mm} above the chord): it has no natural arch, so front and tail divide at {share:shares} of the length by ruler.",
  "arch-undetermined":
    "Where the {side:sides} brow arches is known only to ±{u:1mm}: front and tail divide at {share:shares} of the length by ruler instead.",
  "arch-share-beyond":
    "At {asked:shares} of the length by ruler, the arch would lie {distance:1mm} past the vertical of the {limit:archLimits}: it stands on that, and the front takes {share:shares}.",
  "arch-share-nowhere":
    "No place of the brow gives the front {asked:shares} of the length: the arch stands on the vertical of the {limit:archLimits}, and the front takes {share:shares}.",
  "arch-chosen": "Arch as chosen: {convention:rules}.",
  "tail-at-guide": "Tail end {guide:rules}, {height:tailHeights}.",
  "tail-level-nowhere":
    "Tail end {guide:rules}, at the height of the brow there: {height:tailHeights} it would not lie beyond the arch.",
  "thickness-natural":
    "Thickness as it grows: {start:1mm} at the start, {body:1mm} at the body, {arch:1mm} at the arch.",
  "thickness-evened":
    "Thickness as it grows, evened so that the brow does not thicken towards the arch: {start:1mm} at the start, {body:1mm} at the body, {arch:1mm} at the arch.",
  "thickness-usual":
    "How thick the brow is, is known to ±{u:1mm} only, too little to tell where it is fullest: on the whole as thick as its borders, fullest at the front: {start:1mm} at the start, {body:1mm} at the body, {arch:1mm} at the arch.",
  "thickness-chosen":
    "Thickness as chosen: {start:1mm} at the start, {body:1mm} at the body, {arch:1mm} at the arch.",
  "thickness-assumed":
    "Thickness of {start:1mm} at the start, {body:1mm} at the body and {arch:1mm} at the arch; assumed at {assumed:stations}, where no lower border tells.",
  "hair-kept":
    "Hair of the {side:sides} brow grows {past:1mm} past the {mark:marks} guide, sideways: {kept:1mm} of it stays.",
  "border-extended":
    "The {mark:marks} guide misses the {side:sides} brow: its border is extended along its end.",
  "tail-completed":
    "Hair of the {side:sides} brow ends {distance:1mm} before the tail guide: what is added bends towards the level of the lower start.",
  "guide-missed":
    "The {mark:marks} guide meets the {side:sides} brow nowhere, extended or not: the height of its own {mark:marks} is kept.",
  "carried-by-measure":
    "The {side:sides} brow is carried by measure: from its own start, with the leading heights and ruler lengths. Its arch lies {arch:1mm} and its tail end {tail:1mm} farther out than mirrored (negative: nearer the midline).",
  pinned: "The {dot:dots} of the {side:sides} brow stays where {by} fixed it{reason}.",
  "pins-break-levels":
    "Pins leave the {higher:sides} {dot:dots} dot {difference:1mm} higher, more than {limit:mm}.",
  "pins-break-tail-heights":
    "Pins leave the {higher:sides} tail end {difference:1mm} higher, more than {limit:mm}.",
  "pins-break-distances":
    "Pins leave the {farther:sides} {dot:dots} dot {difference:1mm} farther from the midline, more than {limit:mm}.",
  "pins-break-thickness":
    "Pins leave the {thicker:sides} brow {difference:1mm} thicker at the {station:stations}, more than {limit:mm}.",
  "pins-break-share":
    "Pins break the front share: that of the {side:sides} brow is {share:shares}, asked for was {asked:shares} ± {limit:2}.",
  "the-artist": "the artist",
  "pin-reason": ": {reason}",
} as const;
