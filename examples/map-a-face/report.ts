/** A plan as text for a terminal of 80 columns. */
import {
  type BrowPlan,
  type Dot,
  DOTS,
  ENGLISH,
  type FaceFrame,
  type Finding,
  type Measured,
  type MeasureName,
  type Note,
  type Point,
  say,
} from "brow-geometry";
import { type ToleranceName } from "brow-geometry/units";
import { type Turning } from "brow-geometry/symmetry";

const COLUMNS = 80;

export function report(plan: BrowPlan, frame: FaceFrame, findings: readonly Finding[]): string {
  return [
    ...section("THE PHOTO", photo(frame)),
    ...section("WILL IT DO", findings.length === 0 ? ["yes"] : bullets(findings.map(graded))),
    ...section("WHY", bullets(plan.reasons)),
    ...section("DOTS of the planned brows, in mm", dots(plan)),
    ...section("LENGTHS of the planned brows, in mm", lengths(plan)),
    ...section("DIFFERENCES, left less right, in mm", differences(plan)),
    ...section("MOVES, from the brows as they grow", moves(plan)),
    ...section("MIND", bullets(plan.cautions.filter(({ code }) => code !== "capture-finding"))),
  ].join("\n");
}

/** What a finding says, with how grave it is. */
function graded(finding: Finding): Note {
  const { severity, code, values } = finding;
  return { code, text: `${severity}: ${say(finding)}`, values };
}

function photo({ scale, midline, turning }: FaceFrame): readonly string[] {
  const percent = (100 * scale.u) / scale.factor;
  const chin = midline.tilt >= 0 ? "left" : "right";
  return [
    `scale   ${scale.factor.toFixed(4)} mm per pixel, ± ${percent.toFixed(1)} %; from: ${scale.source}`,
    `tilt    ${Math.abs(midline.tilt).toFixed(1)} ± ${midline.tiltU.toFixed(1)}°, chin towards the client's ${chin}; midline: ${midline.method}`,
    ...(turning === undefined ? [] : [turned(turning)]),
    ...bullets(scale.notes),
  ];
}

function turned({ yaw, yawU }: Turning): string {
  const side = yaw >= 0 ? "left" : "right";
  return `turned  ${Math.abs(yaw).toFixed(1)} ± ${yawU.toFixed(1)}° towards the client's ${side}; corrected by depth`;
}

function dots({ dots: { right, left } }: BrowPlan): readonly string[] {
  const place = ([x, y]: Point<"mm">): readonly string[] => [Math.abs(x).toFixed(1), y.toFixed(1)];
  return [
    row("", ["right brow", "", "left brow", ""]),
    row("", ["out", "up", "out", "up"]),
    ...Object.keys(DOTS).map((dot) =>
      row(ENGLISH.terms.dots[dot as Dot], [
        ...place(right[dot as Dot]),
        ...place(left[dot as Dot]),
      ]),
    ),
    "out: from the midline; up: above the inner eye corners",
  ];
}

function lengths({ measures: { right, left, startToStart } }: BrowPlan): readonly string[] {
  return [
    row("", ["right brow", "", "left brow", ""]),
    row("", ["by ruler", "on the photo", "by ruler", "on the photo"]),
    row(
      "front",
      [right.front, right.frontOnPhoto, left.front, left.frontOnPhoto].map((one) => withU(one)),
    ),
    row(
      "tail",
      [right.tail, right.tailOnPhoto, left.tail, left.tailOnPhoto].map((one) => withU(one)),
    ),
    row("front share", [withU(right.frontShare, 3), "", withU(left.frontShare, 3), ""]),
    row("start to start", [withU(startToStart)]),
  ];
}

const COMPARED: readonly (readonly [MeasureName, string])[] = [
  ["startHeight", "start height"],
  ["archHeight", "arch height"],
  ["tailHeight", "tail height"],
  ["startDistance", "start distance"],
  ["archDistance", "arch distance"],
  ["tailDistance", "tail distance"],
  ["front", "front by ruler"],
  ["tail", "tail by ruler"],
  ["frontShare", "front share"],
  ["startThickness", "start thickness"],
  ["bodyThickness", "body thickness"],
  ["archThickness", "arch thickness"],
  ["exocanthionToTailEnd", "outer eye corner to tail end"],
  ["lidToBrow", "lid to brow"],
];

function differences({ naturalComparison, comparison }: BrowPlan): readonly string[] {
  const within = (name: ToleranceName): string =>
    `±${comparison.tolerances.tolerances[name]?.limits.upper ?? "any"}`;
  return [
    row("", ["as they grow", "", "as planned", ""]),
    ...COMPARED.map(([measure, name]) =>
      row(
        name,
        [naturalComparison, comparison].flatMap((sides) => {
          const found = sides.differences.find((one) => one.measure === measure);
          const decimals = measure === "frontShare" ? 3 : 1;
          return [withU(found?.difference, decimals), found?.decision?.outcome ?? ""];
        }),
      ),
    ),
    ...wrapped(
      `Decided against ${within("position")} mm, ${within("thickness")} mm for thickness, ${within("frontShare")} for the front share, proven at 95 %. Undecided: landmarks such as these are not precise enough to prove either.`,
    ),
  ];
}

function moves({ moves: all }: BrowPlan): readonly string[] {
  return all.map((move) => say(move));
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return ["", title, ...lines.map((line) => `  ${line}`)];
}

/** A long name has a line of its own, indented as a section is. */
function row(name: string, cells: readonly string[]): string {
  const head = name.length > 16 ? `${name}\n${" ".repeat(2 + 16)}` : name.padEnd(16);
  return (head + cells.map((cell) => cell.padStart(15)).join("")).trimEnd();
}

function withU(measured: Measured | undefined, decimals: number = 1): string {
  if (measured === undefined) return "unknown";
  return `${rounded(measured.value, decimals)} ± ${measured.u.toFixed(decimals)}`;
}

/** With so many decimals, and 0 without a sign. */
function rounded(value: number, decimals: number): string {
  return value.toFixed(decimals).replace(/^-(?=[0.]+$)/, "");
}

function bullets(notes: readonly Note[]): readonly string[] {
  return notes.flatMap((note) =>
    wrapped(say(note)).map((line, index) => (index === 0 ? "- " : "  ") + line),
  );
}

/** Text broken between words so that it fits an indented column. */
function wrapped(text: string): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + 1 + word.length > COLUMNS - 4) {
      lines.push(line);
      line = word;
    } else {
      line = line === "" ? word : `${line} ${word}`;
    }
  }
  return [...lines, line];
}
