import { type Face, fromMarkup } from "brow-geometry";
import { parseLandmarkFile } from "brow-geometry/schema";
import address from "../../../data/sample-face.json?url";
import { shotOf } from "./shot.js";
import type { Shot } from "../appointment/basis.js";

/** The landmarks of a real face without its photo, as a face finder left them; they come with the library. */
export async function exampleShot(): Promise<Shot> {
  const file = parseLandmarkFile(await (await fetch(address)).json());
  const found: Face<"px"> =
    file.markup === "by-hand" ? file.face : fromMarkup(file.markup, file.landmarks, file);
  return shotOf(found, { kind: "irises" });
}
