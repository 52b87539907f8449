/** Of a scale, and of what is not decided. */
export const QUANTITIES = {
  "population-average":
    "The iris is taken to be {width:mm} ± {u:mm} wide, the average of the population: that alone makes every length uncertain by {percent:0} %. Shares and angles do not depend on it.",
  "ring-factor":
    "The source draws irises {factor:2} ± {u:2} times as wide as they are: the scale is corrected for it.",
  "one-iris": "Only the {side:sides} iris was measured.",
  "irises-differ":
    "The right iris is {right:1} px wide and the left one {left:1} px, more apart than their placement explains: the head may be turned. The mean is used, with half the difference as its uncertainty.",
  "perspective-unknown":
    "The start of a brow is nearer to the camera than the iris and its tail end farther away: from {distance:0mm} they read {start:1} % too large and {tail:1} % too small.",
  "perspective-corrected":
    "The camera was {distance:0mm} away: its perspective is removed, by depth or, where a brow has none, by the modelled skin.",
  "reference-off-plane":
    "The reference lies {nearer:1mm} nearer to the camera, which is {distance:0mm} away, than what is measured: lengths are corrected for it.",
  "ruler-recedes":
    "The ruler recedes from the camera: a millimetre is {first:2} px at one end and {last:2} px at the other. The scale of its middle is used; hold it level.",
  "reading-rejected":
    "The reading of {reading:mm} does not fit the others, which give {expected:1mm}: it was left out.",
  "readings-scatter":
    "The readings scatter {times:1} times as much as the placement of their marks explains: the uncertainty was widened.",
  "marker-tilted": "The marker is tilted by about {tilt:0}°: its longer axis is used.",
  "rim-scatters":
    "The points of the rim lie {times:1} times as far off a circle as their placement explains: the uncertainty was widened.",
  "sources-disagree":
    "The scales differ by more than their uncertainties allow ({scales} mm per pixel): at least one is wrong. The uncertainty was widened to cover them.",
  "scale-of-source": "{source:scaleSources} {factor:4} ± {u:4}",
  "repeat-placements":
    "The mean of {placements} independent placements like this one would decide, or one reading with a standard uncertainty of at most {u:2}, such as a ruler's.",
  "measure-better":
    "Only a reading with a standard uncertainty of at most {u:2} would decide, such as a ruler's; it would take more placements like this one than anybody averages.",
} as const;
