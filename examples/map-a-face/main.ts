/**
 * Maps the brows of one face, from landmarks in a file to a drawing and a plan:
 * `npm run demo` takes the sample face, `npm run demo -- FILE.json` your own.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { mapAFace } from "./map-a-face.js";

const outcome = mapAFace(process.argv[2]);
if (outcome.kind === "problem") {
  console.error(outcome.text);
  process.exitCode = 1;
} else {
  mkdirSync("demo", { recursive: true });
  writeFileSync("demo/map.svg", outcome.drawing);
  writeFileSync("demo/plan.json", JSON.stringify(outcome.plan, undefined, 2));
  console.log("demo/map.svg: the picture; demo/plan.json: everything as data.\n");
  console.log(outcome.text);
}
