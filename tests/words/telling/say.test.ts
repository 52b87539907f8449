import { readFileSync } from "node:fs";
import { type Note, say } from "brow-geometry";
import { parseRecord } from "brow-geometry/schema";
import { ENGLISH, sayAdvice, type Words } from "brow-geometry/words";
import { describe, expect, it } from "vitest";
import { refusal } from "../../support/refusal.js";

/** English with one sentence replaced. */
const saying = (sentence: string): Words => ({
  ...ENGLISH,
  sentences: { ...ENGLISH.sentences, passed: sentence },
});

const said = (sentence: string, values: Note["values"]): string =>
  say({ code: "passed", values }, saying(sentence));

describe("say", () => {
  it("puts values into the sentence", () => {
    const values = { side: "left", angle: 3.14159 };
    expect(said("{side}: {angle:1}°, {angle}°", values)).toBe("left: 3.1°, 3.14159°");
    expect(said("{angle:1mm}, {angle:mm}", values)).toBe("3.1 mm, 3.14159 mm");
  });

  it("writes no minus before a zero", () => {
    expect(said("{x:1} {x:0}", { x: -0.04 })).toBe("0.0 0");
    expect(said("{x:1}", { x: -0.06 })).toBe("−0.1");
  });

  it("takes words from a vocabulary, and leaves those that it lacks", () => {
    expect(said("{dot:dots}", { dot: "tailEnd" })).toBe("tail end");
    expect(said("{dot:dots}", { dot: "toString" })).toBe("toString");
  });

  it("says notes within a note, and lists", () => {
    const within = { code: "way-up", values: { by: 1.5 } };
    expect(
      said("{a}; {b}; {c:dots}", { a: within, b: [within, within], c: ["tailEnd", "x"] }),
    ).toBe("up 1.5 mm; up 1.5 mm, up 1.5 mm; tail end, x");
  });

  it("adds to a finding what is not proven, and what to do", () => {
    const values = { size: 6, limit: 5, u: 2, outcome: "undecided" };
    const finding = { code: "head-tilted", values } as const;
    expect(say(finding)).toBe(
      "The head is tilted by 6.0° in the picture; up to 5° will do. With a standard uncertainty of 2.0° neither keeping that nor exceeding it is proven. Hold the camera level and ask the client to hold the head upright.",
    );
    expect(say(finding).endsWith(sayAdvice(finding))).toBe(true);
  });

  it.each([
    ["head-turned", 2, "2.0°"],
    ["brow-raised", 0.5, "0.5 mm"],
    ["too-few-pixels", 0.4, "0.4 pixels"],
    ["eyes-narrow-for-irises", 0.21, "0.21 irises"],
    ["irises-unequal", 0.09, "9 %"],
    ["canthal-index-implausible", 0.03, "0.03"],
  ] as const)("tells the uncertainty of %s in the unit of its value", (code, u, told) => {
    const numbers = { value: 1, size: 1, limit: 1, lower: 1, upper: 2, pixel: 1, tolerance: 1 };
    const values = {
      ...numbers,
      percent: 16,
      away: 200,
      side: "left",
      towards: "left",
      wide: "left",
    };
    expect(say({ code, values: { ...values, u, outcome: "undecided" } })).toContain(
      `With a standard uncertainty of ${told} neither`,
    );
  });

  it("leaves a sentence that a note brings along as it is", () => {
    expect(say({ code: "of-my-own", text: "The lamp {flickers}.", values: {} })).toBe(
      "The lamp {flickers}.",
    );
  });

  it.each([
    [{ code: "one-iris", values: {} }, "values.side"],
    [{ code: "of-my-own", values: {} }, "code"],
    [{ code: "toString", values: {} }, "code"],
  ])("refuses %j", (note, field) => {
    expect(refusal(() => say(note)).detail.field).toBe(field);
  });
});

describe("a record with the sentences of an earlier version", () => {
  const record = parseRecord(
    JSON.parse(readFileSync("tests/fixtures/record-with-sentences.json", "utf8")),
  );

  it("opens, and says what was written", () => {
    const { cautions, reasons, moves } = record.plan;
    expect(cautions.map((caution) => say(caution))).toContain(
      "Expression differs between captures. The left brow stands 3.0 mm higher than in the baseline.",
    );
    expect(reasons.map((reason) => say(reason))).toContain(
      "The tail end of the left brow stays where Ada fixed it: as it grows.",
    );
    expect(moves[0] && say(moves[0])).toBe("right start: down 0.5 mm, outward 4 mm");
  });
});
