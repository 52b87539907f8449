import type { BrowPlan } from "brow-geometry";
import { compareResult, type ResultCapture, type ResultComparison } from "brow-geometry/mapping";
import { type Attempt, attempt } from "brow-geometry/units";
import type { Visit } from "../appointment/appointment.js";
import { isTraced } from "../appointment/basis.js";
import { faceIn, inputOf } from "./input.js";
import { dayInWords, text } from "../words/language.js";

/** The visits that can be compared: a photo's borders count once they lie on what is seen. */
export function capturesOf(visits: readonly Visit[]): readonly ResultCapture[] {
  return visits.flatMap(({ weeks, date, basis }): readonly ResultCapture[] => {
    if (!isTraced(basis)) return [];
    const name = date === undefined ? nameOf(weeks) : dayInWords(date);
    return [{ name, weeks, face: faceIn(inputOf(basis)) }];
  });
}

/** What came of a plan; undefined before there is anything to compare. */
export function resultsOf(
  plan: BrowPlan,
  visits: readonly Visit[],
): Attempt<ResultComparison> | undefined {
  if (visits.length === 0) return undefined;
  const captures = attempt(() => capturesOf(visits));
  if (!captures.ok) return captures;
  if (captures.answer.length === 0) return undefined;
  return attempt(() => compareResult(plan, captures.answer));
}

/** What a visit is called. */
export function nameOf(weeks: number): string {
  return weeks === 0 ? text.value.weeks[0] : text.value.afterWeeks(weeks);
}
