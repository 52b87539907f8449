import { readFileSync } from "node:fs";
import { type Face, fromMarkup } from "brow-geometry";
import { type ImageSize, type MarkupPoints } from "brow-geometry/landmarks";

/** One real face of the fixtures: its points as the detector answered them. */
export interface SampleFace {
  readonly photo: number;
  /** From left to right in the photo, counted from 1. */
  readonly face: number;
  readonly image: ImageSize;
  readonly landmarks: readonly (readonly number[])[];
}

interface FixtureFile {
  readonly provenance: { readonly photo: ImageSize };
  readonly faces: readonly { readonly landmarks: readonly (readonly number[])[] }[];
}

/** All real faces, as 478 normalised points of the face mesh. */
export const meshSamples: readonly SampleFace[] = samples("mesh");

/** The same faces in the same order, as 68 points in pixels. */
export const points68Samples: readonly SampleFace[] = samples("points68");

/** The most frontal of the real faces, as mesh points. */
export const frontalMesh: SampleFace = sample(meshSamples, 6, 3);

/** The same face as 68 points. */
export const frontalPoints68: SampleFace = sample(points68Samples, 6, 3);

export function faceOfMesh(
  { landmarks, image }: Pick<SampleFace, "landmarks" | "image">,
  options: { readonly correct?: boolean } = {},
): Face<"px"> {
  return fromMarkup("mesh-478", landmarks, { coordinates: "normalised", image, ...options });
}

export function faceOfPoints68(
  { landmarks }: { landmarks: MarkupPoints },
  options: { readonly correct?: boolean } = {},
): Face<"px"> {
  return fromMarkup("points-68", landmarks, { coordinates: "pixels", ...options });
}

/** The points themselves, where how they are read is what a test is about. */
export const AS_FOUND = { correct: false } as const;

function samples(detector: "mesh" | "points68"): readonly SampleFace[] {
  return [1, 2, 3, 4, 5, 6].flatMap((photo) => {
    const url = new URL(`../fixtures/${detector}-sample${photo}.json`, import.meta.url);
    const file = JSON.parse(readFileSync(url, "utf8")) as FixtureFile;
    const { width, height } = file.provenance.photo;
    return file.faces.map(({ landmarks }, index) => ({
      photo,
      face: index + 1,
      image: { width, height },
      landmarks,
    }));
  });
}

function sample(all: readonly SampleFace[], photo: number, face: number): SampleFace {
  const found = all.find((one) => one.photo === photo && one.face === face);
  if (found === undefined) throw new Error(`no face ${face} on photo ${photo}`);
  return found;
}
