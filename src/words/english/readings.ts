/** Of what is read, and how to bring it back. */
export const READINGS = {
  "dot-placed":
    "{side:sides} {dot:dots}: {distance:mm} from the midline, {height:mm} above the inner eye corners",
  "dot-stays": "{side:sides} {dot:dots}: stays",
  "dot-moves": "{side:sides} {dot:dots}: {ways}",
  "way-up": "up {by:mm}",
  "way-down": "down {by:mm}",
  "way-outward": "outward {by:mm}",
  "way-inward": "inward {by:mm}",
  "read-on-side": "{side:sides} {measure:measures}",
  "read-between": "{measure:measures}",
  "read-on-both": "{measure:measures} of both sides",
  millimetres: "{amount:mm}",
  degrees: "{amount} degrees",
  "square-millimetres": "{amount:mm2}",
  share: "{amount:2}",
  "too-much": "{what}: {amount} {kind:tooMuch}",
  "too-little": "{what}: {amount} {kind:tooLittle}",
  even: "{side:sides} {measure:measures}: even with the {other:sides} one",
  "evenness-unknown":
    "{side:sides} {measure:measures}: not yet known whether it is even; read it again",
} as const;
