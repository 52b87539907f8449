import { readFileSync } from "node:fs";
import { type Face, type FaceSide, fromMarkup, px } from "brow-geometry";
import type { MarkupPoints } from "brow-geometry/landmarks";

type Place = readonly [number, number];

interface HandSide {
  readonly endocanthion: Place;
  readonly exocanthion: Place;
  readonly pupil: Place;
  readonly alare: Place;
  readonly cheilion: Place;
}

interface LondonRow {
  readonly face: number;
  readonly hand: {
    readonly right: HandSide;
    readonly left: HandSide;
    readonly midline: {
      readonly sellion: Place;
      readonly subnasale: Place;
      readonly labialeSuperius: Place;
      readonly stomion: Place;
      readonly menton: Place;
    };
  };
  readonly mesh478: MarkupPoints;
  readonly points68: MarkupPoints;
}

/** One face as a hand and two detectors have it. */
export interface LondonFace {
  readonly face: number;
  readonly hand: Face<"px">;
  readonly mesh: Face<"px">;
  readonly points68: Face<"px">;
}

/** 102 frontal faces: see the README of the fixtures. */
export function londonFaces(): readonly LondonFace[] {
  const url = new URL("../fixtures/london-faces.ndjson", import.meta.url);
  return readFileSync(url, "utf8")
    .trim()
    .split("\n")
    .map((line) => {
      const { face, hand, mesh478, points68 } = JSON.parse(line) as LondonRow;
      return {
        face,
        hand: faceByHand(hand),
        mesh: fromMarkup("mesh-478", mesh478, { coordinates: "pixels" }),
        points68: fromMarkup("points-68", points68, { coordinates: "pixels" }),
      };
    });
}

/** Eye corners, pupils, nose wings, mouth and midline: what a midline is fitted to. */
function faceByHand({ right, left, midline }: LondonRow["hand"]): Face<"px"> {
  const side = (drawn: HandSide): FaceSide<"px"> => ({
    endocanthion: px(drawn.endocanthion),
    exocanthion: px(drawn.exocanthion),
    pupil: px(drawn.pupil),
    alare: px(drawn.alare),
    cheilion: px(drawn.cheilion),
  });
  return {
    right: side(right),
    left: side(left),
    midline: {
      sellion: px(midline.sellion),
      subnasale: px(midline.subnasale),
      labialeSuperius: px(midline.labialeSuperius),
      stomion: px(midline.stomion),
      menton: px(midline.menton),
    },
  };
}
