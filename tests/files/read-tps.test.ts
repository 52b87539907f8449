import { readTps } from "brow-geometry/files";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";

const text = [
  "LM=3",
  "12.5 70",
  "-1 5",
  "14 69",
  "IMAGE=anna.png",
  "ID=0",
  "SCALE=0.25",
  "",
  "lm = 1",
  "NA na",
  "Comment=a=b",
  "id = second face ",
].join("\n");

const sets = [
  { id: "0", points: [[12.5, 70], null, [14, 69]], image: "anna.png", scale: 0.25 },
  { id: "second face", points: [null] },
];

describe("a TPS file", () => {
  it.each([
    ["with keys in any case", text],
    [
      "with CRLF, a byte order mark and a blank tail",
      `\uFEFF${text.replaceAll("\n", "\r\n")}\r\n\r\n`,
    ],
  ])("is read %s; negative or NA is missing", (_, content) => {
    expect(readTps(content)).toEqual(sets);
  });

  it("has y turned to count downwards by the height of the picture", () => {
    expect(readTps(text, { imageHeight: 100 })[0]?.points).toEqual([[12.5, 30], null, [14, 31]]);
  });

  it("misses a point with either coordinate negative", () => {
    expect(readTps("LM=3\n-1 -1\n5 -1\n0 0\n")[0]?.points).toEqual([null, null, [0, 0]]);
  });

  it("may hold points with depth, and faces without a name or without points", () => {
    expect(readTps("LM3=2\n1 2 -3\nNA NA NA\nLM=0\n")).toEqual([
      { id: "", points: [[1, 2, -3], null] },
      { id: "", points: [] },
    ]);
    expect(readTps(" \n")).toEqual([]);
  });

  it.each([
    ["a key before any face", "ID=4\n", 'line 1, column 1 is "ID=4"', '"LM=" and the number'],
    ["no key", "LM=1\n1 2\nfoo\n", 'line 3, column 1 is "foo"', 'a key and "="'],
    ["curves", "LM=1\n1 2\n  CURVES=1\n", "line 3, column 3", "nothing else is read"],
    ["a count that is none", "LM=0x2\n", 'line 1, column 4 is "0x2"', "0 to 2000 points"],
    ["a huge count", "LM=1e8\n", 'line 1, column 4 is "1e8"', "0 to 2000 points"],
    ["too few points", "LM=3\n1 2\n", "line 1, column 4", "3 lines of points after it, not 1"],
    ["a key among the points", "LM=2\n1 2\nID=1\n", "line 3, column 5", "2 numbers"],
    ["a comma for a point", "LM=1\n1 2,5\n", 'line 2, column 3 is "2,5"', "a decimal number"],
    ["half a missing point", "LM=1\nNA 2\n", 'line 2, column 1 is "NA"', "a decimal number"],
    ["two names", "LM=1\n1 2\nID=a\nID=b\n", "line 4, column 1", "one ID"],
    ["two pictures", "LM=1\n1 2\nIMAGE=a\nIMAGE=b\n", "line 4, column 1", "one IMAGE"],
    ["a scale of 0", "LM=1\n1 2\nSCALE=0\n", 'line 3, column 7 is "0"', "a number above 0"],
    ["two scales", "LM=1\n1 2\nSCALE=1\nSCALE=1\n", "line 4, column 1", "one SCALE"],
  ])("is refused with %s", (_, content, place, need) => {
    const error = refusal(() => readTps(content));
    expect(error.code).toBe("not-parsed");
    expect(error.message).toContain(place);
    expect(error.message).toContain(need);
  });

  it("is refused with a height of 0", () => {
    expect(refusal(() => readTps(text, { imageHeight: 0 })).code).toBe("out-of-range");
  });
});
