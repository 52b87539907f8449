import { readFileSync } from "node:fs";
import { join } from "node:path";
import { packageFolder } from "./server.js";

/**
 * @typedef {import("./page/reader.js").FoundFace} FoundFace
 * @typedef {import("./detector.js").ReadPhoto} ReadPhoto
 */

/**
 * The landmarks of one face as JSON, with where they come from: the file that the library's own
 * demo reads.
 * @param {FoundFace} face
 * @param {ReadPhoto} photo
 * @param {{ file: string, sha256: string, face: number }} from
 */
export function landmarkFile(face, photo, from) {
  const { width, height } = photo;
  const { version } = JSON.parse(
    readFileSync(join(packageFolder("@mediapipe/face_mesh"), "package.json"), "utf8"),
  );
  const entries = {
    provenance: {
      photo: { file: from.file, sha256: from.sha256, face: from.face },
      detector: {
        package: "@mediapipe/face_mesh",
        version,
        options: photo.options,
        window: face.window,
      },
    },
    image: { width, height },
    markup: "mesh-478",
    coordinates: "normalised",
    landmarks: face.landmarks.map((point) => point.map((value) => Number(value.toFixed(7)))),
  };
  const lines = Object.entries(entries).map(
    ([name, value]) => `${JSON.stringify(name)}: ${JSON.stringify(value)}`,
  );
  return `{\n${lines.join(",\n")}\n}\n`;
}
