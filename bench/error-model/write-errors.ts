/** Fits the errors of detectors and writes their table: `npm run study:errors`. */
import { writeFileSync } from "node:fs";
import { format } from "prettier";
import type { MarkupErrors } from "../../src/landmarks/errors/markup-errors.js";
import { fitErrors } from "./fit-errors.js";
import { londonFaces } from "../../tests/support/london-faces.js";

const faces = londonFaces();
const [mesh, points68] = (["mesh-478", "points-68"] as const).map((name) => fitErrors(faces, name));

const text = `import { mm } from "../../units/index.js";
import type { KnownErrors, MarkupErrors } from "./markup-errors.js";

// Written by \`npm run study:errors\`: see bench/error-model.

/**
 * Detectors measured by us against 102 frontal faces drawn by hand: DeBruine L. and Jones B., Face
 * Research Lab London Set, figshare, doi 10.6084/m9.figshare.5047666.v5, CC BY 4.0; template points as
 * in the R data package webmorphR.stim. The iris drawn by hand is taken as 11.71 mm wide.
 */

/** @mediapipe/face_mesh 0.4.1657299874. */
const MESH: MarkupErrors = ${code(mesh)};

/** @vladmandic/face-api 1.7.15 (faceLandmark68Net). */
const POINTS_68: MarkupErrors = ${code(points68)};

/** The errors of the usual detector of each markup, where they are known. */
export const MARKUP_ERRORS: KnownErrors = {
  "mesh-478": MESH,
  "mesh-468": MESH,
  "points-68": POINTS_68,
};
`;

/** Uncertainties are lengths in mm; a rest is a pair of plain numbers. */
function code(errors: MarkupErrors | undefined): string {
  const { places, landmarks, ...others } = errors as MarkupErrors;
  const lengths = JSON.stringify(landmarks).replace(/:([\d.]+)/g, ":mm($1)");
  const rest = JSON.stringify(others).slice(1, -1);
  return `{ places: ${JSON.stringify(places)}, landmarks: ${lengths}, ${rest} }`;
}

const file = new URL("../../src/landmarks/errors/measured-errors.ts", import.meta.url);
writeFileSync(file, await format(text, { parser: "typescript", printWidth: 100 }));
