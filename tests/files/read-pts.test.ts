import { fromMarkup, lengthBetween, mm } from "brow-geometry";
import { readPts } from "brow-geometry/files";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";
import { frontalPoints68 } from "../support/sample-faces.js";

const text = "version: 1\nn_points: 3\n{\n10.5 20\n-1e1 +.5\n7 8.\n}\n";
const points = [
  [10.5, 20],
  [-10, 0.5],
  [7, 8],
];

describe("a .pts file of 68-point sets", () => {
  it.each([
    ["as it usually stands", text],
    [
      "with CRLF, extra blanks and blank lines",
      "\uFEFFversion:  1 \r\n\r\nn_points:3\r\n{ \r\n 10.5\t20 \r\n-1e1  +.5\r\n7 8.\r\n }\r\n\r\n \r\n",
    ],
    ["without a line end after the brace", text.trimEnd()],
    ["with the line ends of old Macs", text.replaceAll("\n", "\r")],
    ["in capitals", text.replace("version", "VERSION").replace("n_points", "N_Points")],
  ])("is read %s", (_, content) => {
    expect(readPts(content, { id: "anna" })).toEqual({ id: "anna", points });
  });

  it("may count its first pixel as 1 (trap 7): places move, lengths stay", () => {
    const lines = frontalPoints68.landmarks.map(([x = 0, y = 0]) => `${x + 1} ${y + 1}`);
    const content = `version: 1\nn_points: 68\n{\n${lines.join("\n")}\n}`;
    const [asWritten, fromZero] = [0, 1].map((firstPixel) =>
      fromMarkup("points-68", readPts(content, { firstPixel: firstPixel as 0 | 1 }).points, {
        coordinates: "pixels",
      }),
    );
    const [one, other] = [asWritten?.right, fromZero?.right];
    expect(other?.exocanthion?.[0]).toBeCloseTo((one?.exocanthion?.[0] ?? 0) - 1, 9);
    const width = (side: typeof one): number =>
      Math.hypot(
        (side?.exocanthion?.[0] ?? 0) - (side?.endocanthion?.[0] ?? 0),
        (side?.exocanthion?.[1] ?? 0) - (side?.endocanthion?.[1] ?? 0),
      );
    expect(width(one)).toBeCloseTo(width(other), 9);
    expect(lengthBetween(mm([0, 0]), mm([width(one), 0]), { kind: "flat" })).toBeGreaterThan(0);
  });

  it("of a 3D landmark editor is another format, and refused by name", () => {
    const content = "Version 1.0\n2\nS000 1.5 2.5 3.5\nS001 9999 9999 9999\n";
    const error = refusal(() => readPts(content));
    expect(error.code).toBe("not-parsed");
    expect(error.message).toContain("this .pts is of a 3D landmark editor (lines S000 x y z)");
  });

  it.each([
    ["nothing", "", "line 1, column 1 is missing", '"version: 1"'],
    ["another version", text.replace("1", "2"), 'line 1, column 1 is "version: 2"', '"version: 1"'],
    [
      "no count",
      text.replace("n_points: 3\n", ""),
      "line 2, column 1",
      '"n_points: " and a number',
    ],
    ["a count in words", text.replace("3", "three"), "line 2, column 1", "and a number"],
    ["half a point", text.replace("points: 3", "points: 2.5"), "line 2", "1 to 2000 points"],
    ["too large a count", text.replace("points: 3", "points: 1e9"), "line 2", "1 to 2000 points"],
    ["no brace", text.replace("{\n", ""), "line 3, column 1", '"{"'],
    [
      "a hexadecimal number",
      text.replace("10.5", "0x10"),
      'line 4, column 1 is "0x10"',
      "a decimal number",
    ],
    [
      "a comma for a point",
      text.replace("10.5", "10,5"),
      'line 4, column 1 is "10,5"',
      "a decimal number",
    ],
    [
      "infinity",
      text.replace("20", "Infinity"),
      'line 4, column 6 is "Infinity"',
      "a decimal number",
    ],
    [
      "a number beyond a double",
      text.replace("20", "1e999"),
      'line 4, column 6 is "1e999"',
      "a decimal number",
    ],
    ["a third number", text.replace("10.5 20", "10.5 20 30"), "line 4, column 9", "2 numbers"],
    ["one number", text.replace("10.5 20", "10.5"), "line 4, column 5", "2 numbers"],
    [
      "fewer points than it says",
      text.replace("points: 3", "points: 4"),
      "line 7, column 1",
      "4 points, not 3",
    ],
    ["more points than it says", text.replace("points: 3", "points: 2"), "line 6, column 1", '"}"'],
    ["no end", text.replace("}\n", ""), "line 7, column 1", '"}"'],
    ["more after its end", `${text}1 2\n`, "line 8, column 1", "nothing after the closing brace"],
  ])("is refused with %s", (_, content, place, need) => {
    const error = refusal(() => readPts(content));
    expect(error.code).toBe("not-parsed");
    expect(error.message).toContain(place);
    expect(error.message).toContain(need);
  });

  it("is refused beyond the limit", () => {
    const error = refusal(() => readPts(text, { mostCharacters: 10 }));
    expect(error).toMatchObject({ code: "out-of-range", detail: { field: "text.length" } });
    expect(refusal(() => readPts(text, { firstPixel: 2 as never })).code).toBe("out-of-range");
  });
});
