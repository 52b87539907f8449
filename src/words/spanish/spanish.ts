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

/**
 * Everything that this library says, in Spanish. **Not yet read by a native practitioner**: have one read it before
 * clients see it, and send what is wrong.
 *
 * @example
 * ```ts
 * import { say, SPANISH } from "brow-geometry/words";
 * say({ code: "one-iris", values: { side: "left" } }, SPANISH); // → "Solo se midió el iris izquierdo."
 * say({ code: "way-up", values: { by: 1.5 } }, SPANISH); // → "1,5 mm hacia arriba"
 * ```
 */
export const SPANISH: Words = /* @__PURE__ */ spanish();

function spanish(): Words {
  return wordsOf({
    language: "es",
    direction: "ltr",
    separator: ", ",
    decimalSign: ",",
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
