import type { Measured, Sides } from "../../units/index.js";
import type { LandmarkUncertainty, StandIn } from "../face/face.js";
import type { MidlineLandmark, SideLandmark } from "../face/landmarks.js";

/** Where a landmark stands in a markup: at one point, or at the mean of several; counted from 0. */
export type Place = number | readonly number[];

/** Index table of one side of the face; lines run as in `FaceSide`. */
export interface MarkupSide {
  readonly points: { readonly [Name in SideLandmark]?: Place };
  readonly upperLid?: readonly number[];
  readonly lowerLid?: readonly number[];
  readonly browUpper?: readonly number[];
  readonly browLower?: readonly number[];
}

/** Points of one iris: its centre and four points of its rim, in order round it. */
export interface MarkupIris {
  readonly centre: number;
  readonly rim: readonly [number, number, number, number];
}

/** Where the landmarks stand among the points of a markup, and what is known of these points. */
export interface IndexTable<
  Alare extends string = string,
  Instead extends string = string,
> extends Sides<MarkupSide> {
  /** Names of the points where they are more than numbers. */
  readonly labels?: readonly string[];
  readonly midline: { readonly [Name in MidlineLandmark]?: Place };
  /** Points that may stand for alare; the first is the usual one. */
  readonly alare: Readonly<Record<Alare, Sides<number>>>;
  readonly irises?: Sides<MarkupIris>;
  /** Points that are each other's mirror image. */
  readonly pairs: readonly Sides<number>[];
  /** Points on the middle of the face. */
  readonly middle: readonly number[];
  readonly standIns: readonly (StandIn & { readonly instead: Instead })[];
  readonly uncertainty: LandmarkUncertainty;
  readonly ringFactor: Measured;
  /** Who says how deep points lie, where they carry depth. */
  readonly depth: "none" | "estimated" | "measured";
}

/** Pairs of points whose numbers run in step: `[17, 26, 5]` is 17 ↔ 26, 18 ↔ 25 … five times. */
export function pairsDownFrom(
  ...runs: readonly (readonly [right: number, left: number, count: number])[]
): readonly Sides<number>[] {
  return runs.flatMap(([right, left, count]) =>
    Array.from({ length: count }, (_, step) => ({ right: right + step, left: left - step })),
  );
}

/** The table of the left side: that of the right, each point replaced by its mirror partner. */
export function leftOf(right: MarkupSide, pairs: readonly Sides<number>[]): MarkupSide {
  const partners = new Map(pairs.map((pair) => [pair.right, pair.left]));
  return throughPartners(right, partners);
}

function throughPartners<Part>(part: Part, partners: ReadonlyMap<number, number>): Part {
  if (typeof part === "number") return partners.get(part) as Part;
  if (Array.isArray(part))
    return part.map((one: unknown) => throughPartners(one, partners)) as Part;
  const entries = Object.entries(part as object).map(([name, one]: [string, unknown]) => [
    name,
    throughPartners(one, partners),
  ]);
  return Object.fromEntries(entries) as Part;
}
