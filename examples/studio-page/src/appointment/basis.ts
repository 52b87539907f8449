import type { Brow, Choices, Face, MapRecord } from "brow-geometry";
import type { Declared } from "brow-geometry/landmarks";
import type { FlatPoint, Sides } from "brow-geometry/units";
import type { Readings } from "./readings.js";

/** A picture as it lies beneath the map: turned the right way up, no larger than is needed. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  /** A data address: it goes into a record, and reads back from one. */
  readonly href: string;
}

/** Where millimetres on a photo come from. */
export type Gauge =
  | { readonly kind: "irises" }
  | {
      readonly kind: "ruler";
      readonly from: FlatPoint<"px">;
      readonly to: FlatPoint<"px">;
      /** Millimetres between both. */
      readonly length: number;
    };

export type Borders = Required<Brow<"px">>;

/** A face on a photo, with the borders of its hair as the artist has pulled them. */
export interface Shot {
  readonly kind: "photo";
  /** Left out for landmarks that came without their photo. */
  readonly picture?: Picture;
  /** As the face finder, or a hand, has placed it. */
  readonly found: Face<"px">;
  /** All that were found, where there are several. */
  readonly faces?: readonly Face<"px">[];
  readonly hair: Sides<Borders>;
  /** Whether the artist says that a brow's borders lie on its hair: only then is anything planned from them. */
  readonly traced: Sides<boolean>;
  /** Which brows have no hair at all: their borders count for nothing. */
  readonly bare: Sides<boolean>;
  readonly gauge: Gauge;
}

/** A face by ruler alone. */
export interface RulerFace {
  readonly kind: "ruler";
  readonly readings: Readings;
  readonly bare: Sides<boolean>;
}

/** A record that was opened: its face stays as it was agreed. */
export interface Kept {
  readonly kind: "kept";
  /** All of it, so that what this page does not read is saved again as it was. */
  readonly record: MapRecord;
  /** As an appointment takes them: once these change, it is another map. */
  readonly choices: Choices;
  readonly declared: Declared;
  readonly picture?: Picture;
}

/** What a map is made from. */
export type Basis = Shot | RulerFace | Kept;

/** With hair on both sides, as faces are taken to be until somebody says otherwise. */
export const NONE_BARE: Sides<boolean> = { right: false, left: false };

/** Whether borders lie on what is seen: those of a photo are a guess until somebody says so. */
export function isTraced(basis: Basis): boolean {
  return basis.kind !== "photo" || (basis.traced.right && basis.traced.left);
}

export function pictureOf(basis: Basis): Picture | undefined {
  return basis.kind === "ruler" ? undefined : basis.picture;
}
