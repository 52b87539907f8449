import { type Words, wordsOf } from "../catalogue/words.js";
import { CAPTURE_ADVICE, CAPTURES } from "./captures.js";
import { CAUTIONS } from "./cautions.js";
import { FACES } from "./faces.js";
import { GRADES } from "./grades.js";
import { LABELS } from "./labels.js";
import { QUANTITIES } from "./quantities.js";
import { READINGS } from "./readings.js";
import { REASONS } from "./reasons.js";
import { TERMS } from "./terms.js";
import { VISITS } from "./visits.js";
import { WEIGHING } from "./weighing.js";
import { WISHED } from "./wished.js";
import { WORK } from "./work.js";

/** Everything that this library says, in English. */
export const ENGLISH: Words = /* @__PURE__ */ english();

function english(): Words {
  return wordsOf({
    language: "en",
    direction: "ltr",
    separator: ", ",
    decimalSign: ".",
    lengths: "mm",
    sentences: {
      ...QUANTITIES,
      ...FACES,
      ...CAPTURES,
      ...REASONS,
      ...CAUTIONS,
      ...READINGS,
      ...WORK,
      ...WEIGHING,
      ...WISHED,
      ...VISITS,
      ...GRADES,
    },
    advice: CAPTURE_ADVICE,
    labels: LABELS,
    terms: TERMS,
  });
}
