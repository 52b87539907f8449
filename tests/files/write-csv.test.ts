import { writeTable } from "brow-geometry/files";
import papa from "papaparse";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { guarded, unguarded } from "../../src/files/formula-guard.js";
import { refusal } from "../support/refusal.js";

describe("a table as CSV", () => {
  it("quotes what has to be quoted and leaves nothing for nothing", () => {
    expect(
      writeTable(
        ["a", "b"],
        [
          ['say "x", y', -1.5],
          ["two\nlines", undefined],
        ],
      ),
    ).toBe('a,b\r\n"say ""x"", y",-1.5\r\n"two\nlines",\r\n');
  });

  it.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", " =1", "＝1", "'=1"])(
    "does not let the text %j be a formula",
    (text) => {
      expect(guarded(text)).toBe(`'${text}`);
      const [, row] = papa.parse<string[]>(writeTable(["a"], [[text]]), { newline: "\r\n" }).data;
      expect(row).toEqual([`'${text}`]);
    },
  );

  it("leaves every other text as it is, negative numbers too", () => {
    for (const text of ["anna", "a=b", "it's", "'quoted'", ""]) expect(guarded(text)).toBe(text);
    expect(writeTable(["a"], [[-5]])).toBe("a\r\n-5\r\n");
  });

  it("guards column names as well", () => {
    expect(writeTable(["=a"], [])).toBe("'=a\r\n");
  });

  it("can always be undone", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom("'", "=", "+", "-", "@", " ", "\t", "\r", "a", "b") }),
        (text) => {
          expect(unguarded(guarded(text))).toBe(text);
          expect(guarded(text)).not.toMatch(/^[=+\-@\t\r]/);
        },
      ),
    );
  });

  it("is refused with a row of another length or a number that is none", () => {
    expect(refusal(() => writeTable(["a"], [["x", "y"]])).code).toBe("wrong-count");
    expect(refusal(() => writeTable(["a"], [[Number.NaN]])).code).toBe("not-finite");
  });
});
