import type { Measured, Sides } from "../units/index.js";
import type { LandmarkUncertainty, MidlineLandmark, SideLandmark, StandIn } from "./face.js";

/** Names of the markups that the library reads. */
export type MarkupName = "mesh-478" | "mesh-468" | "points-68";

/** Where a landmark stands in a markup: at one point, or at the mean of several; counted from 0. */
export type Place = number | readonly number[];

/**
 * Index table of one side of the face. Lines run as in `FaceSide`: borders of the brow from start
 * to tail, lids from endocanthion to exocanthion.
 */
export interface MarkupSide {
  readonly points: { readonly [Name in SideLandmark]?: Place } & {
    readonly endocanthion: number;
    readonly exocanthion: number;
  };
  readonly upperLid: readonly number[];
  readonly lowerLid: readonly number[];
  readonly browUpper: readonly number[];
  readonly browLower?: readonly number[];
}

/** Points of one iris: its centre and four points of its rim, in order round it. */
export interface MarkupIris {
  readonly centre: number;
  readonly rim: readonly [number, number, number, number];
}

/** Points that may stand for alare, and what they are in words. */
export interface MarkupAlare extends Sides<number> {
  readonly instead: string;
}

/** Mirror partners, and the points on the middle of the face. */
export interface MarkupRelief {
  readonly pairs: readonly Sides<number>[];
  readonly middle: readonly number[];
}

/** Index table of a markup, with what is known of its points. */
export interface Markup<Alare extends string = string> extends Sides<MarkupSide> {
  readonly name: MarkupName;
  /** How many points it has. */
  readonly size: number;
  readonly midline: { readonly [Name in MidlineLandmark]?: Place };
  readonly alare: Readonly<Record<Alare, MarkupAlare>>;
  readonly usualAlare: Alare;
  readonly irises?: Sides<MarkupIris>;
  readonly relief?: MarkupRelief;
  readonly standIns: readonly StandIn[];
  readonly uncertainty: LandmarkUncertainty;
  readonly ringFactor: Measured;
}
