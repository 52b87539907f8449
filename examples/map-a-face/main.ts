/**
 * Maps the brows of one face, from landmarks in a file to a drawing and a plan:
 * `npm run demo` takes the sample face, `npm run demo -- FILE.json` your own.
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import {
  type CaptureOptions,
  checkCapture,
  drawPlan,
  type Face,
  faceFrame,
  type FaceFrame,
  fromCocoWholeBody,
  fromMesh478,
  fromPoints68,
  fromPoints98,
  GeometryError,
  planOnPhoto,
  requirePlannable,
  type Scale,
  scaleFromIris,
  scaleFromReference,
  turnToFront,
} from "brow-geometry";
import { type LandmarkFile, parseLandmarkFile } from "brow-geometry/schema";
import { report } from "./report.js";

const setting = `An invented appointment. A studio prepares a first visit from the photo that
came with the booking; on the day, all is measured again on the skin, upright.
Studio and booking are made up. The face is real: landmarks that a detector
found on a sample photo (examples/data/sample-face.json).`;

const sample = fileURLToPath(new URL("../data/sample-face.json", import.meta.url));

function main(path: string): void {
  const file = parseLandmarkFile(JSON.parse(readFileSync(path, "utf8")));
  const face = requirePlannable(faceIn(file));
  const scale = scaleIn(file, face);
  const frame = frameOf(face, scale);
  const findings = checkCapture(face, { purpose: "map", scale, ...declaredIn(file) });
  const plan = planOnPhoto(face, frame, file.choices, { findings });

  mkdirSync("demo", { recursive: true });
  writeFileSync("demo/map.svg", drawPlan(plan));
  writeFileSync("demo/plan.json", JSON.stringify(plan, undefined, 2));
  if (path === sample) console.log(setting);
  console.log(report(plan, frame, findings));
  console.log("\nWritten: demo/map.svg, the drawing; demo/plan.json, everything as data.");
}

function faceIn(file: LandmarkFile): Face<"px"> {
  switch (file.markup) {
    case "by-hand":
      return file.face;
    case "coco-wholebody-face":
      return fromCocoWholeBody(file.keypoints, file);
    case "points-68":
      return fromPoints68(file.landmarks, file);
    case "points-98":
      return fromPoints98(file.landmarks, file);
    case "mesh-468":
    case "mesh-478":
      return fromMesh478(file.landmarks, file);
  }
}

/** From a length that is known on the photo, or for want of one from the irises. */
function scaleIn({ reference }: LandmarkFile, face: Face<"px">): Scale {
  return reference === undefined
    ? scaleFromIris(face)
    : scaleFromReference(reference.from, reference.to, reference.length);
}

/** What somebody said of the client's posture, which no photo shows. */
function declaredIn({ choices }: LandmarkFile): Pick<CaptureOptions, "declared"> {
  return choices?.declared === undefined ? {} : { declared: choices.declared };
}

/** A head that was turned is looked at from its own front, where its points know their depth. */
function frameOf(face: Face<"px">, scale: Scale): FaceFrame {
  const depth = face.source?.depth ?? "none";
  return depth === "none" ? faceFrame(face, scale) : turnToFront(face, scale);
}

/** A file that cannot be opened, is no JSON, or does not hold what a map needs. */
function isProblemOfFile(error: unknown): error is Error {
  return (
    error instanceof GeometryError ||
    error instanceof SyntaxError ||
    (error instanceof Error && "syscall" in error)
  );
}

const [path = sample] = process.argv.slice(2);
try {
  main(path);
} catch (error) {
  if (!isProblemOfFile(error)) throw error;
  console.error(`${path}: ${error.message}`.replaceAll(/\s+/g, " "));
  process.exitCode = 1;
}
