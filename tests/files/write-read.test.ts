import { GeometryError } from "brow-geometry";
import {
  type PointSet,
  readCocoKeypoints,
  readCsv,
  readNdjson,
  readPts,
  readTps,
  writeCsv,
  writeNdjson,
  writeTps,
} from "brow-geometry/files";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";

const coordinate = fc
  .double({ noNaN: true, noDefaultInfinity: true })
  // A zero has one sign in every file.
  .map((value) => (value === 0 ? 0 : value));
const positive = fc.double({ min: Number.MIN_VALUE, noNaN: true, noDefaultInfinity: true });
const name = fc.string({ unit: "binary" });
const formula = fc
  .tuple(fc.constantFrom("'", "''", "=", "+", "-", "@", "\t", "\r", " =", "＝"), name)
  .map(([sign, rest]) => sign + rest);

/** Sets of points that all have as many points, all flat or all deep. */
function pointSets(
  number: fc.Arbitrary<number>,
  id: fc.Arbitrary<string>,
  leastPoints: number,
): fc.Arbitrary<readonly PointSet[]> {
  return fc
    .tuple(fc.integer({ min: leastPoints, max: 5 }), fc.constantFrom(2, 3))
    .chain(([count, size]) =>
      fc.array(
        fc.record(
          {
            id,
            points: fc.array(
              fc.option(fc.array(number, { minLength: size, maxLength: size }), { freq: 4 }),
              { minLength: count, maxLength: count },
            ),
            image: id.filter((text) => text !== ""),
            scale: positive,
          },
          { requiredKeys: ["id", "points"], noNullPrototype: true },
        ),
        { maxLength: 5 },
      ),
    ) as unknown as fc.Arbitrary<readonly PointSet[]>;
}

describe("what is written is read back the same", () => {
  it("as CSV, whatever the names", () => {
    fc.assert(
      fc.property(pointSets(coordinate, fc.oneof(name, formula), 1), (sets) => {
        // What has neither a name nor a point at the end of a table is refused, see below.
        const { id = "a", points = [], image = "", scale } = sets[sets.length - 1] ?? {};
        fc.pre((id + image).trim() !== "" || scale !== undefined || points.some(Boolean));
        // So is a name that two sets have.
        const names = sets.map((set) => set.id).filter((text) => text !== "");
        fc.pre(new Set(names).size === names.length);
        expect(readCsv(writeCsv(sets))).toEqual(sets);
      }),
    );
  });

  it("as NDJSON, whatever the names", () => {
    fc.assert(
      fc.property(pointSets(coordinate, name, 0), (sets) => {
        expect(readNdjson(writeNdjson(sets))).toEqual(sets);
      }),
    );
  });

  it("as TPS, where names are plain and coordinates not negative", () => {
    const plain = name.map((text) => text.replace(/[\r\n]/g, "").trim());
    fc.assert(
      fc.property(pointSets(coordinate.map(Math.abs), plain, 0), (sets) => {
        // A set of which every point is missing does not say whether it was deep.
        expect(readTps(writeTps(sets))).toEqual(sets);
      }),
    );
  });

  it("as TPS with the height of the picture, to rounding", () => {
    const sets = [{ id: "anna", points: [[12.25, 30.5], null] }] as const;
    expect(readTps(writeTps(sets, { imageHeight: 480 }), { imageHeight: 480 })).toEqual(sets);
  });
});

describe("any text", () => {
  const readers: readonly (readonly [string, (text: string) => unknown, fc.Arbitrary<string>])[] = [
    [
      "readPts",
      readPts,
      pieces("version: 1\n", "n_points: 2\n", "{\n", "1 2\n", "}\n", "NaN", "-", "S000"),
    ],
    [
      "readTps",
      readTps,
      pieces("LM=1\n", "LM3=2\n", "1 2\n", "NA NA\n", "ID=a\n", "SCALE=", "0.5\n", "="),
    ],
    [
      "readCsv",
      readCsv,
      pieces("id,", "x_0,", "y_0", "\n", "\r\n", "1,", "2", '"', '""', "\t", "'="),
    ],
    [
      "readNdjson",
      readNdjson,
      pieces('{"id":"a",', '"points":', "[[1,2],", "null]", "}", "\n", "1e999", "[["),
    ],
    [
      "readCocoKeypoints",
      readCocoKeypoints,
      pieces('[{"id":1,', '"face_kpts":', "[1,2,2]", "}]", "null", '{"annotations":', "}"),
    ],
  ];

  it.each(readers)("is read or refused with one of our errors by %s", (_, read, alike) => {
    fc.assert(
      fc.property(fc.oneof(alike, fc.string({ unit: "binary" }), fc.string()), (text) => {
        try {
          read(text);
        } catch (error) {
          if (!(error instanceof GeometryError)) throw error;
          expect(error.code).toBe("not-parsed");
          expect(error.message).toMatch(/line \d+, column \d+/);
        }
      }),
      { numRuns: 500 },
    );
  });

  // Twice the text may not take four times the work: long runs of what a careless pattern would try
  // again from every place.
  it.each([
    ["readPts", readPts, "version: 1\nn_points: 1\n{\n", " "],
    ["readPts", readPts, "version: 1\nn_points: 1\n{\n", "1"],
    ["readTps", readTps, "LM=1\n1 2\nID=a", " "],
    ["readTps", readTps, "", "=\n"],
    ["readCsv", readCsv, "x0,y0\n", '"'],
    ["readCsv", readCsv, "x0,y0\n", "1,2\n"],
    ["readCsv", readCsv, "x0,y0\n", ' "'],
    ["readCsv", readCsv, "x0,y0\n", "'"],
    ["readNdjson", readNdjson, "", "["],
    ["readNdjson", readNdjson, "", '{"id":'],
    ["readCocoKeypoints", readCocoKeypoints, "", "\n["],
    ["readCocoKeypoints", readCocoKeypoints, "[", '"a\\n",'],
  ] as const)("of a megabyte is done by %s at once: %j and %j repeated", (_, read, head, run) => {
    const text = head + run.repeat(Math.ceil(1e6 / run.length));
    try {
      read(text);
    } catch (error) {
      expect(error).toBeInstanceOf(GeometryError);
    }
  });

  it.each([
    ["readNdjson", readNdjson, '{"id":"a","points":', "[", "]", "}"],
    ["readNdjson", readNdjson, '{"id":"a","points":[', '{"a":', "}", "]}"],
    ["readCocoKeypoints", readCocoKeypoints, "", "[", "]", ""],
    ["readCocoKeypoints", readCocoKeypoints, '{"annotations":', '{"a":[', "]}", "}"],
  ] as const)(
    "nested without end is refused by %s, not a crash: %j%j",
    (_, read, head, open, close, foot) => {
      const middle = open.endsWith(":") ? "1" : "";
      const text = head + open.repeat(100_000) + middle + close.repeat(100_000) + foot;
      const error = refusal(() => read(text));
      expect(error.code).toBe("not-parsed");
      expect(error.message).toMatch(/line 1, column \d+/);
    },
  );

  // Twelve megabytes: a pattern that remembers every sign runs out of stack.
  it.each([
    ["plain signs", "x"],
    ["escapes", "\\n"],
    ["digits", undefined],
  ] as const)("with an endless run of %s is refused where it is wrong", (_, run) => {
    const long = run === undefined ? "1".repeat(12e6) : `"${run.repeat(12e6 / run.length)}"`;
    const head = `{"a":${long},"id":`;
    expect(refusal(() => readNdjson(`${head}null}`)).message).toContain(
      `line 1, column ${head.length + 1} (id) is null`,
    );
    expect(refusal(() => readCocoKeypoints(`[${head}null}]`)).message).toContain(
      `line 1, column ${head.length + 2} ([0].id) is null`,
    );
  });

  it.each([undefined, null, 12, new TextEncoder().encode("x0,y0"), {}])(
    "that is none is refused: %j",
    (nothing) => {
      for (const [, read] of readers) {
        const error = refusal(() => read(nothing as never));
        expect(error.code).toBe("not-parsed");
        expect(error.message).toContain("needs the text of a file; decode bytes first");
      }
    },
  );

  it("that is too long is refused before anything is read", () => {
    for (const [, read] of readers) {
      const limited = read as (text: string, limits: { mostCharacters: number }) => unknown;
      expect(refusal(() => limited("x".repeat(11), { mostCharacters: 10 })).code).toBe(
        "out-of-range",
      );
    }
  });
});

describe("what a file cannot hold is refused in writing", () => {
  it.each([
    ["NaN", () => writeNdjson([{ id: "a", points: [[1, Number.NaN]] }]), "not-finite"],
    [
      "flat and deep points",
      () =>
        writeNdjson([
          {
            id: "a",
            points: [
              [1, 2],
              [1, 2, 3],
            ],
          },
        ]),
      "out-of-range",
    ],
    ["a scale of 0", () => writeNdjson([{ id: "a", points: [], scale: 0 }]), "out-of-range"],
    [
      "sets of different sizes",
      () =>
        writeCsv([
          { id: "a", points: [[1, 2]] },
          { id: "b", points: [] },
        ]),
      "wrong-count",
    ],
    [
      "two sets of one name in CSV",
      () =>
        writeCsv([
          { id: "a", points: [[1, 2]] },
          { id: "b", points: [[1, 2]] },
          { id: "a", points: [[3, 4]] },
        ]),
      "out-of-range",
    ],
    ["sets without points in CSV", () => writeCsv([{ id: "a", points: [] }]), "wrong-count"],
    [
      "a deep set after a flat one in CSV",
      () =>
        writeCsv([
          { id: "a", points: [[1, 2]] },
          { id: "b", points: [[1, 2, 3]] },
        ]),
      "out-of-range",
    ],
    [
      "a scale of 0 in CSV",
      () => writeCsv([{ id: "a", points: [[1, 2]], scale: 0 }]),
      "out-of-range",
    ],
    [
      "a last set of nothing in CSV",
      () =>
        writeCsv([
          { id: "a", points: [null] },
          { id: " ", points: [null] },
        ]),
      "out-of-range",
    ],
    [
      "a negative coordinate in TPS",
      () => writeTps([{ id: "a", points: [[-1, 2]] }]),
      "out-of-range",
    ],
    [
      "a point below the picture in TPS",
      () => writeTps([{ id: "a", points: [[1, 20]] }], { imageHeight: 10 }),
      "out-of-range",
    ],
    [
      "a line break in a TPS name",
      () => writeTps([{ id: "a\nLM=1", points: [[1, 2]] }]),
      "out-of-range",
    ],
    [
      "blanks at the end of a TPS name",
      () => writeTps([{ id: "a", points: [[1, 2]], image: "b " }]),
      "out-of-range",
    ],
    [
      "a scale of 0 in TPS",
      () => writeTps([{ id: "a", points: [[1, 2]], scale: 0 }]),
      "out-of-range",
    ],
  ])("%s", (_, write, code) => {
    expect(refusal(write).code).toBe(code);
  });
});

function pieces(...of: readonly string[]): fc.Arbitrary<string> {
  return fc.array(fc.constantFrom(...of), { maxLength: 12 }).map((parts) => parts.join(""));
}
