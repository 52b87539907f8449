import { length } from "../../units/index.js";
import type { Skin } from "./skin.js";

/**
 * The skin of a face that is so many times as large in every direction: with it, the uncertainty of
 * a photo's scale is carried into depth as into everything else.
 */
export function enlargeSkin(skin: Skin, times: number): Skin {
  switch (skin.kind) {
    case "flat":
      return skin;
    case "modelled":
      return { ...skin, width: length(times * skin.width) };
    case "fitted": {
      const curve = ({ second, fourth }: typeof skin.right): typeof skin.right => ({
        second: second / times,
        fourth: fourth / times ** 3,
      });
      return {
        ...skin,
        atMidline: length(times * skin.atMidline),
        right: curve(skin.right),
        left: curve(skin.left),
      };
    }
  }
}
