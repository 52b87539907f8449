import type { Dot } from "../../landmarks/index.js";

/** What an artist calls the dots. */
export const DOT_NAMES: { readonly [Name in Dot]: string } = {
  upperStart: "start",
  upperBody: "body",
  upperArch: "arch",
  tailEnd: "tail end",
  lowerStart: "lower start",
  lowerBody: "lower body",
  lowerArch: "lower arch",
};
