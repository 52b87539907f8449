import { ENGLISH } from "brow-geometry/words";
import { expect, it } from "vitest";
import { CAPTURES } from "../../src/words/english/captures.js";
import { CAUTIONS } from "../../src/words/english/cautions.js";
import { FACES } from "../../src/words/english/faces.js";
import { GRADES } from "../../src/words/english/grades.js";
import { QUANTITIES } from "../../src/words/english/quantities.js";
import { READINGS } from "../../src/words/english/readings.js";
import { REASONS } from "../../src/words/english/reasons.js";
import { VISITS } from "../../src/words/english/visits.js";
import { WEIGHING } from "../../src/words/english/weighing.js";
import { WISHED } from "../../src/words/english/wished.js";
import { WORK } from "../../src/words/english/work.js";

it("has every code once: no topic takes the place of another's sentence", () => {
  const topics = [
    QUANTITIES,
    FACES,
    CAPTURES,
    REASONS,
    CAUTIONS,
    READINGS,
    WORK,
    WEIGHING,
    WISHED,
    VISITS,
    GRADES,
  ];
  const codes = topics.flatMap((topic) => Object.keys(topic));
  expect(codes.filter((code, index) => codes.indexOf(code) !== index)).toEqual([]);
  expect(codes.sort()).toEqual(Object.keys(ENGLISH.sentences).sort());
});
