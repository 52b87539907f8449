/** A plan as text for a terminal of 80 columns and 60 lines; everything is in the plan as data. */
import {
  type BrowPlan,
  type FaceFrame,
  type Finding,
  type Note,
  say,
  type WorkStep,
  workSteps,
} from "brow-geometry";
import { sayAdvice } from "brow-geometry/words";

const COLUMNS = 80;
/** What goes beyond so many lines of one kind is left to the data. */
const MOST = { reasons: 6, cautions: 6 };

export function report(plan: BrowPlan, frame: FaceFrame, findings: readonly Finding[]): string {
  const steps = workSteps(plan);
  return [
    ...section("THE PHOTO", photo(frame, findings)),
    ...section(
      "STEPS",
      steps.flatMap((step) => wrapped(say(step))),
    ),
    ...section("BY RULER on the skin, in mm", rulers(steps)),
    ...section("WHY", upTo(MOST.reasons, plan.reasons)),
    ...section("MIND", upTo(MOST.cautions, plan.cautions.filter(isNoFinding))),
  ].join("\n");
}

function photo({ scale }: FaceFrame, findings: readonly Finding[]): readonly string[] {
  const percent = (100 * scale.u) / scale.factor;
  const [telling, others] = [findings.filter(isTelling), findings.filter((one) => !isTelling(one))];
  return [
    `${scale.factor.toFixed(4)} mm per pixel, ± ${percent.toFixed(1)} %, from: ${scale.source}`,
    ...telling.flatMap(({ severity, ...finding }) =>
      bullet(`${severity}: ${withoutAdvice(finding)}`),
    ),
    ...(others.length === 0 ? [] : [`- unchecked: ${others.length} things, see checkCapture`]),
  ];
}

function isTelling({ severity }: Finding): boolean {
  return severity === "retake" || severity === "caution";
}

function withoutAdvice(finding: Note<Finding["code"]>): string {
  return say(finding).replace(` ${sayAdvice(finding)}`, "");
}

/** A finding is told with its photo. */
function isNoFinding({ code }: Note): boolean {
  return code !== "capture-finding";
}

/** The distances between points of skin that the last check reads on each side. */
function rulers(steps: readonly WorkStep[]): readonly string[] {
  const [right, left] = steps.slice(-2);
  const read = (step: WorkStep | undefined, words: string): string => {
    const check = step?.checks.find(({ laid }) => say(laid) === words);
    if (check?.reading === undefined || check.u === undefined) return "";
    return `${check.reading.toFixed(1)} ± ${check.u.toFixed(1)}`;
  };
  const rows = left?.checks.map(({ laid }) => say(laid)).slice(0, ROWS) ?? [];
  return [
    row("", "right brow", "left brow"),
    ...rows.map((words) => row(words, read(right, words), read(left, words))),
  ];
}

/** From the eye corners, and along the brow. */
const ROWS = 5;

function row(name: string, right: string, left: string): string {
  return `${name.padEnd(32)}${right.padStart(14)}${left.padStart(14)}`;
}

/** As many as fit so many lines, and how many more there are. */
function upTo(most: number, notes: readonly Note[]): readonly string[] {
  const lines: string[] = [];
  for (const [index, note] of notes.entries()) {
    const next = bullet(say(note));
    if (lines.length + next.length > most) {
      return [...lines, `- ${notes.length - index} more in the plan`];
    }
    lines.push(...next);
  }
  return lines;
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return ["", title, ...lines.map((line) => `  ${line}`)];
}

function bullet(text: string): readonly string[] {
  return wrapped(text).map((line, index) => (index === 0 ? "- " : "  ") + line);
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
