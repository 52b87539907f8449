import { readCsv } from "brow-geometry/files";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";

const anna = {
  id: "anna",
  points: [
    [12.5, 30],
    [14, 31],
  ],
};

describe("a CSV file of landmarks", () => {
  it.each([
    ["x_0 …, y_0 …", "id,x_0,x_1,y_0,y_1\nanna,12.5,14,30,31\n"],
    ["blanks before names", "id, x_0, x_1, y_0, y_1\nanna,12.5,14,30,31\n"],
    ["x0,y0,x1,y1", "id,x0,y0,x1,y1\nanna,12.5,30,14,31\n"],
    ["counted from 1, in any order", "y2,x2,id,x1,y1\n31,14,anna,12.5,30\n"],
    [
      "columns of others between",
      'frame,id,x_0,"confidence, in %",x_1,X_0,y_0,y_1\n1,anna,12.5,9,14,99,30,31\n',
    ],
    [
      "CRLF, a byte order mark and a blank tail",
      "\uFEFFid,x_0,x_1,y_0,y_1\r\nanna,12.5,14,30,31\r\n\r\n \r\n",
    ],
    ["line ends of two kinds", "id,x_0,x_1,y_0,y_1\nanna,12.5,14,30,31\r\n"],
    ["line ends of two kinds, the longer first", '"id",x_0,x_1,y_0,y_1\r\n"anna",12.5,14,30,31\n'],
    [
      "rows of empty cells at the end",
      "id,x_0,x_1,y_0,y_1\r\nanna,12.5,14,30,31\r\n,,,,\r\n, ,,,\r\n",
    ],
    ["the line ends of old Macs", "id,x_0,x_1,y_0,y_1\ranna,12.5,14,30,31"],
    ["blanks about numbers", "id,x_0,x_1,y_0,y_1\nanna, 12.5 ,14,30, 31\n"],
    ["quoted cells", '"id","x_0","x_1","y_0","y_1"\n"anna","12.5","14","30","31"\n'],
    ["a blank line before the header", "\nid,x_0,x_1,y_0,y_1\nanna,12.5,14,30,31\n"],
  ])("is read with %s", (_, text) => {
    expect(readCsv(text)).toEqual([anna]);
  });

  it.each([
    [";", "id;x0;y0;x1;y1\nanna;12.5;30;14;31\n"],
    ["\t", "id\tx0\ty0\tx1\ty1\nanna\t12.5\t30\t14\t31\n"],
  ] as const)("is read with %j between cells", (delimiter, text) => {
    expect(readCsv(text, { delimiter })).toEqual([anna]);
  });

  it("names faces by the column it is told, or numbers them", () => {
    const text = "file,x0,y0\na.png,1,2\nb.png,3,4\n";
    expect(readCsv(text, { idColumn: "file" }).map(({ id }) => id)).toEqual(["a.png", "b.png"]);
    expect(readCsv(text).map(({ id }) => id)).toEqual(["1", "2"]);
  });

  it("keeps picture, scale, depth and what is missing", () => {
    const text = "id,image,scale,x_0,x_1,y_0,y_1,z_0,z_1\na,a.png,0.25,1,,2,,3,\nb,,,4,5,6,7,8,9\n";
    expect(readCsv(text)).toEqual([
      { id: "a", points: [[1, 2, 3], null], image: "a.png", scale: 0.25 },
      {
        id: "b",
        points: [
          [4, 6, 8],
          [5, 7, 9],
        ],
      },
    ]);
  });

  it("keeps a face of which no point is known, and its place among the others", () => {
    const [none, ...others] = readCsv("x0,y0\n,\n1,2\n");
    expect(none).toEqual({ id: "1", points: [null] });
    expect(others).toEqual([{ id: "2", points: [[1, 2]] }]);
    expect(readCsv("id,x0,y0\nanna,,\n")).toEqual([{ id: "anna", points: [null] }]);
  });

  it("keeps line breaks within cells as they are", () => {
    const text = 'id,x0,y0\r\n"a\nb",1,2\r\n';
    expect(readCsv(text)).toEqual([{ id: "a\nb", points: [[1, 2]] }]);
    expect(readCsv(`${text}"c\r\nd",1,2\n`)[1]?.id).toBe("c\r\nd");
  });

  it("takes nothing for no faces", () => {
    expect(readCsv("")).toEqual([]);
    expect(readCsv("id,x_0,y_0\n")).toEqual([]);
  });

  it.each([
    ["no coordinates", "id,name\na,b\n", "line 1, column 1 (id)", "columns x_0, y_0"],
    [
      "another delimiter",
      "id;x_0;y_0\na;1;2\n",
      "line 1, column 1 (id;x_0;y_0)",
      'is the delimiter ";"?',
    ],
    ["tabs", "id\tx_0\ty_0\na\t1\t2\n", "line 1, column 1", 'is the delimiter "\\t"?'],
    [
      "an axis too short",
      "x_0,x_1,y_0\n1,2,3\n",
      'line 1, column 2 (x_1) is "x_1"',
      "a column y_1 as well",
    ],
    ["a number left out", "x_0,x_2,y_0,y_2\n1,2,3,4\n", "line 1", "a column x_1 as well"],
    ["depth for some points", "x_0,x_1,y_0,y_1,z_0\n1,2,3,4,5\n", "line 1", "a column z_1 as well"],
    ["one name twice", "x_0,y_0,x0\n1,2,3\n", "line 1, column 3 (x0)", "no other column"],
    [
      "a face that two rows name",
      'id,x_0,y_0\n"anna\nb",1,2\nbert,3,4\n"anna\nb",5,6\n',
      "line 5, column 1 (id)",
      "line 2 has it, too",
    ],
    ["two id columns", "id,id,x_0,y_0\n1,2,3,4\n", "line 1, column 2 (id)", "no other column"],
    ["a hexadecimal number", "x0,y0\n1,2\n3,0x10\n", 'line 3, column 2 (y0) is "0x10"', "decimal"],
    ["a comma for a point", 'x0,y0\n"1,5",2\n', 'line 2, column 1 (x0) is "1,5"', "decimal"],
    ["infinity", "x0,y0\n1,Infinity\n", 'line 2, column 2 (y0) is "Infinity"', "decimal"],
    ["NaN", "x0,y0\nNaN,1\n", 'line 2, column 1 (x0) is "NaN"', "decimal"],
    ["half a point", "x0,y0\n1,\n", "line 2, column 2 (y0)", "decimal"],
    ["a cell too few", "x0,y0\n1,2\n\n3\n", "line 4, column 2 (y0)", "2 cells in every row, not 1"],
    ["a cell too many", "x0,y0\n1,2,3\n", "line 2, column 3", "2 cells in every row, not 3"],
    ["a scale of 0", "scale,x0,y0\n0,1,2\n", "line 2, column 1 (scale)", "above 0"],
    ["a quote that never ends", 'x0,y0\n1,"2\n', "line 2, column 4", "Quoted field unterminated"],
    ["text behind a quote", 'x0,y0\n1,"2"3\n', "line 2, column 4", "quote"],
    [
      "more points than anybody marks",
      `${Array.from({ length: 2001 }, (_, i) => `x${i}`).join(",")}\n1\n`,
      "line 1",
      "at most 2000",
    ],
  ])("is refused with %s", (_, text, place, need) => {
    const error = refusal(() => readCsv(text));
    expect(error.code).toBe("not-parsed");
    expect(error.message).toContain(place);
    expect(error.message).toContain(need);
  });

  it("counts lines over line breaks within cells", () => {
    const text = 'id,x0,y0\r\n"a\r\nb\nc",1,2\r\nd,1,x\r\n';
    expect(refusal(() => readCsv(text)).message).toContain("line 5, column 3 (y0)");
  });

  it("is refused beyond the limit", () => {
    expect(refusal(() => readCsv("x0,y0\n1,2\n", { mostCharacters: 5 })).code).toBe("out-of-range");
  });
});
