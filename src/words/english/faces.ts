/** Of a face, its halves, a later capture of it, and what a markup cannot tell of faces. */
export const FACES = {
  "sides-swapped": "The detector saw a flipped picture: its right and left were exchanged.",
  "irises-swapped": "Each iris lay in the other eye; they were exchanged.",
  "mirroring-undone": "The picture was flipped sideways; points lie in the picture as taken.",
  "scaled-to-pixels":
    "Coordinates were shares of a picture {width} wide and {height} high; they are pixels now.",
  "point-missing":
    "{landmark:landmarkPaths} is not complete: point {points} of the markup is missing.",
  "point-misplaced":
    "{landmark:landmarkPaths} is left out: its point does not lie where it should.",
  "stand-in":
    "The {landmark:landmarks} is only approximated: {instead:standIns}. Check by eye whatever rests on it.",
  "irises-narrowed":
    "The source draws irises {factor:2} ± {u:2} times as wide as they are: their edges were moved together.",
  corrected: "The average errors of its detector were taken out.",
  "repeated-points": "{landmark:landmarkPaths} repeats points, {count} too many: once is enough.",
  "half-faces-differ":
    "The halves of the face differ by {difference:1mm} in width: the head is turned by about {yaw:0}°, or the face is that uneven. The photo cannot tell, and no dot is moved for it.",
  "stable-points-disagree":
    "Landmarks that should not move lie {times:1} times as far apart as their uncertainties explain, the {landmark:landmarks} most: {apart:1mm}. Something else has changed, such as the expression or the camera's distance.",
  "landmark-of-side": "{side:sides} {landmark:landmarks}",
  "beyond-guide": "{mark:marks} {rule:rules} (no {lacks:lacked})",
  "beyond-iris-scale": "scale from the width of the iris (no {lacks:lacked})",
  "beyond-thickness": "thickness, area and lower dots of the natural brow (no {lacks:lacked})",
  "beyond-lid-to-brow": "height of the brow over the lid (no {lacks:lacked})",
  "beyond-fitted-skin":
    "skin fitted to the face, and turning a head to the front (no {lacks:lacked})",
  "beyond-true-skin": "skin as it is, and not as it is modelled (no {lacks:lacked})",
  "beyond-pupil-distance": "distance of the pupils (no {lacks:lacked})",
  "beyond-iris-width": "whether the irises are equal, and as wide as people's (no {lacks:lacked})",
  "beyond-yaw": "whether the head is turned or the face uneven (no {lacks:lacked})",
  "beyond-pitch": "whether the chin is raised or lowered (no {lacks:lacked})",
  "beyond-gaze": "whether the eyes look ahead (no {lacks:lacked} of its own)",
  "beyond-stand-ins":
    "what lies at the landmark itself, where another point is read ({lacks:lacked})",
} as const;
