/** Of what a capture was checked for. */
export const CAPTURES = {
  "head-tilted": "The head is tilted by {size:1}° in the picture; up to {limit:0}° will do.",
  "head-turned":
    "The head is turned by {size:1}° to the client's {towards:sides}; up to {limit:0}° will do.",
  "turned-or-asymmetric":
    "The {narrow:sides} half of the face reads {difference:1mm} narrower: the head is turned by about {size:0}° to the client's {narrow:sides}, or the face is asymmetric by that much. Without depth nothing can tell; up to {limit:0}° will do.",
  "chin-raised": "The chin is raised by about {size:0}°; up to {limit:0}° will do.",
  "chin-lowered": "The chin is lowered by about {size:0}°; up to {limit:0}° will do.",
  "eye-closed":
    "The {side:sides} eye is open by {value:2} of its width; open eyes show {limit:2} or more.",
  "looking-aside":
    "The eyes look to the client's {towards:sides}: the pupils stand {size:2} of an eye's width off the middle; up to {limit:2} will do.",
  "looking-up":
    "The eyes look up: the pupils stand {value:2} of an eye's width above the corners; up to {limit:2} will do.",
  "looking-down":
    "The eyes look down: the pupils stand {size:2} of an eye's width below the corners; up to {limit:2} will do.",
  "lips-apart": "The lips are apart by {value:2} of the mouth's width; up to {limit:2} will do.",
  "brow-raised":
    "The {side:sides} brow stands {size:1mm} higher than in the baseline; up to {limit:1mm} will do. It is raised, or the client lies down.",
  "brow-lowered":
    "The {side:sides} brow stands {size:1mm} lower than in the baseline; up to {limit:1mm} will do. It is drawn down, or was raised in the baseline.",
  "too-few-pixels":
    "A pixel is {pixel:2mm} wide: the tolerance of {tolerance:mm} spans {value:1} of them; it takes {limit:0}.",
  "camera-too-near":
    "The camera was about {value:0mm} away, which draws a brow's start {percent:1} % larger than its tail end; from {limit:0mm} on it will do.",
  "camera-distance-unknown":
    "How near the camera was: not checked, since near and far faces look much alike. A brow {depth:0mm} deep, {from:depthOrigins}, is drawn {percent:1} % larger at its start than at its tail end from {limit:0mm}, the least that will do.",
  "eyes-narrow-for-irises":
    "The outer eye corners lie {value:1} irises apart; {limit:1} or more are usual. Landmarks are misplaced, the head is turned, or the camera was too near: eyes of middling width look so from {away:0mm}.",
  "eyes-wide-for-irises":
    "The outer eye corners lie {value:1} irises apart; {limit:1} or fewer are usual. The eyes are half closed, or landmarks are misplaced.",
  "irises-unequal":
    "The {wide:sides} iris reads {percent:0} % wider than the other. Landmarks are misplaced, an eye is half closed, or the head is turned close to the camera.",
  "pupil-distance-implausible":
    "The pupils read {value:0mm} apart; nearly all adults have {lower:0mm} to {upper:0mm}. The scale is wrong, landmarks are misplaced, or this is no adult.",
  "iris-width-implausible":
    "The irises read {value:1mm} wide; {lower:1mm} to {upper:1mm} are usual. The scale is wrong, or landmarks are misplaced.",
  "canthal-index-implausible":
    "The inner eye corners lie {value:2} of the outer ones' distance apart; {lower:2} to {upper:2} are usual. Landmarks are misplaced, or the head is turned far.",
  "picture-stretched":
    "The nose is {value:2} as high as the outer eye corners lie apart; {lower:2} to {upper:2} are usual. Width and height of the picture are exchanged, it was stretched, or landmarks are misplaced.",
  "sides-exchanged": "Right and left are exchanged, or the picture is mirrored.",
  "sides-unlike": "The landmarks of the two sides do not mirror each other across any line.",
  "few-landmarks":
    "There are too few landmarks to say whether this capture will do: of {all} things that landmarks tell, {open} are not checked ({what:toldByLandmarks}).",
  "not-checked": "{what:questions}: not checked.",
  declared: "Declared, not seen: {fact:declared}.",
  "not-declared": "Nobody declared that {fact:declared}, and a picture cannot show it.",
  "declared-contrary": "It was declared that {fact:contrary}: brows stand elsewhere then.",
  "declaration-questioned":
    "It was declared that {fact:declared}, but the {side:sides} brow stands {size:1mm} {where:levels} than in the baseline.",
  "not-proven":
    "With a standard uncertainty of {u} neither keeping that nor exceeding it is proven.",
  "u-in-degrees": "{u:1}°",
  "u-as-length": "{u:1mm}",
  "u-in-pixels": "{u:1} pixels",
  "u-in-irises": "{u:2} irises",
  "u-in-percent": "{percent:0} %",
  "u-as-share": "{u:2}",
  unlimited: "any number of",
} as const;

/** What to do about it. */
export const CAPTURE_ADVICE = {
  "head-tilted": "Hold the camera level and ask the client to hold the head upright.",
  "head-turned": "Ask the client to face the camera.",
  "turned-or-asymmetric":
    "Ask the client to face the camera and take a second picture: what stays is the face.",
  "chin-raised": "Bring the camera to the height of the eyes, or ask for a lower chin.",
  "chin-lowered": "Bring the camera to the height of the eyes, or ask for a higher chin.",
  "eye-closed": "Ask the client to open the eyes without raising the brows.",
  "looking-aside": "Ask the client to look into the camera.",
  "looking-up": "Ask the client to look into the camera, held at the height of the eyes.",
  "looking-down": "Ask the client to look into the camera, held at the height of the eyes.",
  "lips-apart": "Ask the client to close the lips without pressing them.",
  "brow-raised": "Seat the client upright, let the forehead rest, and take the picture again.",
  "brow-lowered": "Seat the client upright, let the forehead rest, and take both pictures again.",
  "too-few-pixels":
    "Fill the picture with the face: zoom in rather than come nearer, or use a better camera.",
  "camera-too-near": "Step back and zoom in.",
  "camera-distance-unknown": "It takes {need:needs}.",
  "eyes-narrow-for-irises": "Step back and zoom in; check eye corners and edges of the irises.",
  "eyes-wide-for-irises":
    "Check that the eyes are open; check eye corners and edges of the irises.",
  "irises-unequal": "Check the edges of both irises.",
  "pupil-distance-implausible": "Check the scale by ruler, and the pupils.",
  "iris-width-implausible": "Check the scale by ruler, and the edges of the irises.",
  "canthal-index-implausible": "Check the four eye corners.",
  "picture-stretched":
    "Give width and height of the picture as it is seen, upright: cameras store pictures turned.",
  "sides-exchanged": "Say how the picture is mirrored, or exchange right and left.",
  "sides-unlike": "Check the landmarks: some lie far off, or belong to another name.",
  "few-landmarks": "Give more landmarks, or look at the picture yourself.",
  "not-checked": "It takes {need:needs}.",
  declared: "Check every distance again upright.",
  "not-declared": "Seat the client upright with a relaxed face, and declare it.",
  "declared-contrary":
    "Seat the client upright, let the forehead rest, and take the picture again.",
  "declaration-questioned": "Ask again, and measure both brows by ruler, upright.",
} as const;
