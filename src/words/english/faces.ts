/** Of a face, its halves, and a later capture of it. */
export const FACES = {
  "sides-swapped": "The detector saw a flipped picture: its right and left were exchanged.",
  "irises-swapped": "Each iris lay in the other eye; they were exchanged.",
  "mirroring-undone": "The picture was flipped sideways; points lie in the picture as taken.",
  "scaled-to-pixels":
    "Coordinates were shares of a picture {width} wide and {height} high; they are pixels now.",
  "point-missing": "{landmark:landmarks} is not complete: point {points} of the markup is missing.",
  "point-misplaced": "{landmark:landmarks} is left out: its point does not lie where it should.",
  "stand-in":
    "{landmark:landmarks} is only approximated: {instead:standIns}. Check by eye whatever rests on it.",
  "irises-narrowed":
    "The source draws irises {factor:2} ± {u:2} times as wide as they are: their edges were moved together.",
  corrected: "The average errors of its detector were taken out.",
  "repeated-points": "{landmark:landmarks} repeats points, {count} too many: once is enough.",
  "half-faces-differ":
    "The halves of the face differ by {difference:1mm} in width: the head is turned by about {yaw:0}°, or the face is that uneven. The photo cannot tell, and no dot is moved for it.",
  "stable-points-disagree":
    "Landmarks that should not move lie {times:1} times as far apart as their uncertainties explain, the {landmark:landmarks} most: {apart:1mm}. Something else has changed, such as the expression or the camera's distance.",
  "landmark-of-side": "{side:sides} {landmark:landmarks}",
} as const;
