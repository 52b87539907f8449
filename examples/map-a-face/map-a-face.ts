import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import {
  type BrowPlan,
  type CaptureOptions,
  checkCapture,
  drawPlan,
  type Face,
  faceFrame,
  type FaceFrame,
  fromMarkup,
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

/** What becomes of a file: a map, or the one line that says why there is none. */
export type Outcome =
  | {
      readonly kind: "map";
      readonly text: string;
      readonly drawing: string;
      readonly plan: BrowPlan;
    }
  | { readonly kind: "problem"; readonly text: string };

/** Maps the face in a file, or the sample face. */
export function mapAFace(path: string = sample): Outcome {
  try {
    return mapOf(path);
  } catch (error) {
    if (!isProblemOfFile(error)) throw error;
    return { kind: "problem", text: `${path}: ${error.message}`.replaceAll(/\s+/g, " ") };
  }
}

function mapOf(path: string): Outcome {
  const file = parseLandmarkFile(JSON.parse(readFileSync(path, "utf8")));
  const face = requirePlannable(faceIn(file));
  const scale = scaleIn(file, face);
  const frame = frameOf(face, scale);
  const findings = checkCapture(face, { purpose: "map", scale, ...declaredIn(file) });
  const plan = planOnPhoto(face, frame, file.choices, { findings });
  const words = report(plan, frame, findings);
  const text = path === sample ? `${setting}\n${words}` : words;
  return { kind: "map", text, drawing: drawPlan(plan), plan };
}

function faceIn(file: LandmarkFile): Face<"px"> {
  return file.markup === "by-hand" ? file.face : fromMarkup(file.markup, file.landmarks, file);
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

/** A head that was turned is looked at from its own front, where its points carry depth. */
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
