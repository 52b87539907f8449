import { readNdjson } from "brow-geometry/files";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";

describe("an NDJSON file of landmarks", () => {
  it("has one face a line", () => {
    const text =
      '\uFEFF{"id":"anna","points":[[12.5,30],null],"image":"a.png","scale":0.25,"age":31}\r\n\n{"points":[[1,2,3]],"id":7}\n';
    expect(readNdjson(text)).toEqual([
      { id: "anna", points: [[12.5, 30], null], image: "a.png", scale: 0.25 },
      { id: "7", points: [[1, 2, 3]] },
    ]);
    expect(readNdjson("")).toEqual([]);
  });

  const first = '{"id":"a","points":[]}\n';
  it.each([
    ["what is no JSON", `${first}{"id":"b",}\n`, 'line 2, column 11 is "}"; needs JSON'],
    ["an object that is cut off", `${first}{"id":"b"`, "line 2, column 10 is missing; needs JSON"],
    ["two values on a line", '{"id":"a","points":[]} {}', 'line 1, column 24 is "{}"; needs JSON'],
    ["a list", "[1]", "line 1, column 1 is [1]; needs an object"],
    ["no name", '{"points":[]}', "line 1, column 1 (id) is missing; needs a text"],
    ["no points", '{"id":"a"}', "line 1, column 1 (points) is missing; needs a list"],
    [
      "points that are none",
      '{"id":"a","points":5}',
      "line 1, column 20 (points) is 5; needs a list",
    ],
    [
      "a text for a number",
      '{"id":"a","points":[[1,2],[1,"2"]]}',
      'line 1, column 27 (points[1]) is [1, "2"]',
    ],
    [
      "a number beyond a double",
      '{"id":"a","points":[[1e999,2]]}',
      "line 1, column 21 (points[0])",
    ],
    ["a point of one number", '{"id":"a","points":[[1]]}', "needs [x, y], [x, y, z] or null"],
    [
      "a scale of 0",
      '{"id":"a","points":[],"scale":0}',
      "line 1, column 31 (scale) is 0; needs a number above 0",
    ],
    [
      "too many points",
      `{"id":"a","points":[${"null,".repeat(2000)}null]}`,
      "needs a list of at most 2000",
    ],
  ])("is refused with %s", (_, text, message) => {
    const error = refusal(() => readNdjson(text));
    expect(error.code).toBe("not-parsed");
    expect(error.message).toContain(message);
  });
});
