import {
  type Face,
  faceFromMillimetres,
  fromLandmarks,
  fromMarkup,
  lengthBetween,
  mm,
  px,
  type Skin,
  skinOf,
} from "brow-geometry";
import { type MarkupPoints } from "brow-geometry/landmarks";
import { describe, expectTypeOf, it } from "vitest";

declare const points: MarkupPoints;
declare const photo: Face<"px">;
declare const face: Face<"mm">;
declare const skin: Skin;
const image = { width: 1920, height: 1280 };

describe("ways to a face", () => {
  it("give a face in pixels from what detectors hand out", () => {
    expectTypeOf(
      fromMarkup("mesh-478", [[0.1, 0.2, 0.3]], { coordinates: "normalised", image }),
    ).toEqualTypeOf<Face<"px">>();
    expectTypeOf(
      fromMarkup("points-68", [{ x: 1, y: 2 }, null], { coordinates: "pixels" }),
    ).toEqualTypeOf<Face<"px">>();
  });

  it("want the image size with shares of it", () => {
    // @ts-expect-error the image is missing
    fromMarkup("mesh-478", points, { coordinates: "normalised" });
    // @ts-expect-error nobody said what coordinates count
    fromMarkup("mesh-478", points, {});
    // @ts-expect-error no way of reading is without a word on coordinates
    fromMarkup("mesh-478", points);
  });

  it("know the stand-ins of their own markup", () => {
    fromMarkup("mesh-478", points, { coordinates: "pixels", alare: "wing-base" });
    fromMarkup("points-68", points, { coordinates: "pixels", alare: "none" });
    // @ts-expect-error a point of the face mesh
    fromMarkup("points-68", points, { coordinates: "pixels", alare: "wing-base" });
    // @ts-expect-error no such markup
    fromMarkup("points-5", points, { coordinates: "pixels" });
    // @ts-expect-error keypoints come as numbers
    fromMarkup("coco-wholebody-face", points, { coordinates: "pixels" });
    // @ts-expect-error no such mirroring
    fromMarkup("points-68", points, { coordinates: "pixels", mirrored: true });
  });

  it("name landmarks as the library does", () => {
    const left = { endocanthion: "b" };
    fromLandmarks({ a: [1, 2] }, { right: { endocanthion: "a" }, left }, { coordinates: "pixels" });
    const misspelt = { endocantion: "a" } as const;
    // @ts-expect-error no such landmark
    fromLandmarks({ a: [1, 2] }, { right: misspelt, left }, { coordinates: "pixels" });
  });

  it("give a face in millimetres from millimetres, the axes being declared", () => {
    expectTypeOf(
      faceFromMillimetres({ right: {}, left: {}, midline: {} }, { axes: { left: "x", up: "y" } }),
    ).toEqualTypeOf<Face<"mm">>();
    // @ts-expect-error no such direction
    faceFromMillimetres({ right: {}, left: {}, midline: {} }, { axes: { left: "x", up: "w" } });
  });
});

describe("the skin", () => {
  it("belongs to a face in millimetres", () => {
    expectTypeOf(skinOf(face)).toEqualTypeOf<Skin>();
    // @ts-expect-error a photo has no skin
    skinOf(photo);
  });

  it("carries lengths in millimetres", () => {
    lengthBetween(mm([1, 2]), mm([3, 4]), skin);
    // @ts-expect-error one end lies in the photo
    lengthBetween(mm([1, 2]), px([3, 4]), skin);
    // @ts-expect-error no such path
    lengthBetween(mm([1, 2]), mm([3, 4]), skin, { path: "ruler" });
  });
});
