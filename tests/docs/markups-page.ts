import { ENGLISH, type LandmarkName, say } from "brow-geometry";
import { describeMarkup, type MarkupDescription } from "brow-geometry/landmarks";
import { MARKUP_NAMES } from "../../src/landmarks/internal.js";
import { format, resolveConfig } from "prettier";

/** The guide to markups, written from what the library says of them. */
export async function markupsPage(): Promise<string> {
  const file = "docs/markups.md";
  const descriptions = MARKUP_NAMES.map(describeMarkup);
  const text = [intro, overview(descriptions), ...descriptions.map(section), outro].join("\n\n");
  return format(text, { ...(await resolveConfig(file)), filepath: file });
}

const TERMS = ENGLISH.terms;

function standInWords(code: string): string {
  const words: Readonly<Record<string, string>> = TERMS.standIns;
  return words[code] ?? code;
}

const intro = `# Markups

What a face contains that is read from the points of a detector or a data set. \`npm run docs:markups\` writes
this page from \`describeMarkup\`.

\`fromMarkup(name, landmarks, options)\` reads them all. The name has to fit the number of points. Those of
the form \`keypoints\` come as a flat list x, y, visibility, x, y, visibility …, the others point by point,
each \`[x, y]\`, \`[x, y, z]\` or an object with these names.

Every markup takes the same options: \`coordinates\` (\`"pixels"\`, or \`"normalised"\` with the size of
the \`image\`), \`mirrored\` (\`"frame"\` where a flipped picture went into the detector, \`"coordinates"\`
where only its answer was flipped), \`alare\` (which points stand for it, or \`"none"\`), \`missing\` (points
not to be used), \`correct\` (\`false\` keeps the points as they were found), \`uncertainty\` and
\`ringFactor\`. Right and left are the client's own whatever the
detector calls them. The face's \`notes\` say what was changed on the way in, and name every stand-in that the
face holds; \`standIns\` lists them for programs, and plans carry them as cautions.

Points with names of your own are read by \`fromLandmarks\`, points in millimetres (a 3D scan, a digitiser)
by \`faceFromMillimetres\`.`;

const outro = `## What no markup gives

The library makes no claim about hairline, zygion, gonion and the bony nasion. Glabella lies near the most
prominent point between the brows, not at a bony landmark.

How near the camera was, whether the brows are raised, and whether the client sat upright with a relaxed face:
[captures](captures.md) says what these take.

Alare, the most lateral point of the nose wing, is a stand-in in every markup. On the face mesh the
choice of its points changes the width of the nose by up to 27 % (measured by us), and the usual ones
lie about 4 mm lateral of the inner eye corners.

## How the tables were checked

The face mesh was checked against the constants of @mediapipe/tasks-vision, and on real faces against the 68
points of another detector. The face part of COCO-WholeBody is those 68. No detector of the 98 points was
available: their table is checked in structure and on real meshes sampled at its points, and their uncertainty is
not measured but taken to be that of 68 points.`;

function overview(descriptions: readonly MarkupDescription[]): string {
  return [
    "| markup | what it is | form | points | brow | iris | depth | usual uncertainty |",
    "| --- | --- | --- | --- | --- | --- | --- | --- |",
    ...descriptions.map((markup) =>
      row([
        `\`${markup.name}\``,
        TERMS.markups[markup.name],
        markup.form,
        String(markup.size),
        lacks(markup, "lowerBorder") ? "upper border" : "both borders",
        markup.landmarks.includes("limbusLateral") ? "centre and rim" : irisOf(markup),
        markup.depth,
        `${markup.uncertainty.default} mm`,
      ]),
    ),
  ].join("\n");
}

function irisOf({ landmarks, standIns }: MarkupDescription): string {
  if (!landmarks.includes("pupil")) return "none";
  return standIns.some(({ landmark }) => landmark === "pupil") ? "stand-in" : "centre";
}

function lacks({ beyond }: MarkupDescription, what: string): boolean {
  return beyond.some((one) => one.values.lacks.some((need) => need === what));
}

function section(markup: MarkupDescription): string {
  const { name, landmarks, standIns, alare, missing, beyond } = markup;
  const standIn = (landmark: LandmarkName): string =>
    standIns
      .filter((one) => one.landmark === landmark)
      .map(({ instead }) => standInWords(instead))
      .join();
  return [
    `## \`${name}\`\n\n${TERMS.markups[name]}.`,
    [
      "| landmark | stand-in, where it is none itself | uncertainty |",
      "| --- | --- | --- |",
      ...landmarks.map((landmark) =>
        row([landmark, standIn(landmark), `${uncertaintyOf(markup, landmark)} mm`]),
      ),
    ].join("\n"),
    [
      "Points that may stand for alare, the usual one first:",
      "",
      ...alare.map((choice) => `- \`"${choice}"\`: ${standInWords(choice)}`),
    ].join("\n"),
    missing.length === 0
      ? "No landmark that the library reads is missing."
      : `Missing: ${missing.join(", ")}.`,
    ["What cannot be computed from it:", "", ...beyond.map((one) => `- ${say(one)}`)].join("\n"),
    ringSentence(markup),
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}

function uncertaintyOf({ uncertainty }: MarkupDescription, landmark: LandmarkName): number {
  return uncertainty.landmarks?.[landmark] ?? uncertainty.default;
}

function ringSentence({ ringFactor: { value, u } }: MarkupDescription): string {
  return value === 1
    ? ""
    : `The source draws the iris ${value} ± ${u} times as wide as it is, sideways: its edges are moved together accordingly.`;
}

function row(cells: readonly string[]): string {
  return `| ${cells.join(" | ")} |`;
}
