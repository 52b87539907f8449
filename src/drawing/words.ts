import type { Dot, MeasureName } from "../landmarks/index.js";
import type { ArchConvention, GuideConvention } from "../proportions/index.js";
import type { Measured } from "../units/index.js";

/** Dots in words. */
export const DOT_WORDS: Readonly<Record<Dot, string>> = {
  upperStart: "upper start",
  upperBody: "upper body",
  upperArch: "upper arch",
  tailEnd: "tail end",
  lowerStart: "lower start",
  lowerBody: "lower body",
  lowerArch: "lower arch",
};

/** Conventions in words, as the end of a phrase such as "arch: …". */
export const CONVENTION_WORDS: Readonly<Record<GuideConvention | ArchConvention, string>> = {
  "alare-vertical": "above the nose wing",
  "endocanthion-vertical": "above the inner eye corner",
  "lateral-limbus-vertical": "above the outer edge of the iris",
  "alare-through-pupil": "nose wing through pupil",
  "eye-width-share": "at a share of the eye's width",
  "exocanthion-vertical": "above the outer eye corner",
  "alare-through-lateral-limbus": "nose wing through outer edge of the iris",
  "alare-through-exocanthion": "nose wing through outer eye corner",
  natural: "where it grows",
  "brow-length-share": "at a share of the length by ruler",
};

/** A length to a tenth of a millimetre, with its unit. */
export function inMillimetres(value: number): string {
  return `${decimal(value, 1)} mm`;
}

/** A reading with its standard uncertainty: "32.4 ± 0.5". */
export function withUncertainty({ value, u }: Measured, decimals: number): string {
  return `${decimal(value, decimals)} ± ${decimal(u, decimals)}`;
}

/** A change with its sign and its standard uncertainty: "+1.5 ± 0.4". */
export function changeWithUncertainty({ value, u }: Measured): string {
  const printed = decimal(value, 1);
  const sign = value > 0 && Number(printed) !== 0 ? "+" : "";
  return `${sign}${printed} ± ${decimal(u, 1)}`;
}

/** A number to a count of decimals, with a minus sign as long as a plus and never before a zero. */
function decimal(value: number, decimals: number): string {
  const printed = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(printed) !== 0 ? `−${printed}` : printed;
}

/** Measures in words, with how they print. */
export const MEASURE_WORDS: Readonly<
  Record<MeasureName, { readonly text: string; readonly decimals: number }>
> = {
  startDistance: { text: "start, from the midline", decimals: 1 },
  archDistance: { text: "arch, from the midline", decimals: 1 },
  tailDistance: { text: "tail end, from the midline", decimals: 1 },
  startHeight: { text: "start, above eye corners", decimals: 1 },
  archHeight: { text: "arch, above eye corners", decimals: 1 },
  tailHeight: { text: "tail end, above eye corners", decimals: 1 },
  front: { text: "front, by ruler", decimals: 1 },
  tail: { text: "tail, by ruler", decimals: 1 },
  frontShare: { text: "front, share of the length", decimals: 2 },
  frontAlong: { text: "front, by tape", decimals: 1 },
  tailAlong: { text: "tail, by tape", decimals: 1 },
  frontOnPhoto: { text: "front, on the photo", decimals: 1 },
  tailOnPhoto: { text: "tail, on the photo", decimals: 1 },
  startThickness: { text: "thickness at the start", decimals: 1 },
  bodyThickness: { text: "thickness at the body", decimals: 1 },
  archThickness: { text: "thickness at the arch", decimals: 1 },
  eyeToTail: { text: "outer eye corner to tail end", decimals: 1 },
  lidToBrow: { text: "upper lid to brow", decimals: 1 },
  frontInclination: { text: "slope of the front, degrees", decimals: 1 },
  browInclination: { text: "slope of the brow, degrees", decimals: 1 },
  area: { text: "area, mm²", decimals: 0 },
};
