import { type Cubic, pathData as curveData } from "../../geometry/index.js";
import { flatten, mapPathWithin } from "../../geometry/internal.js";
import {
  type Brow,
  type BrowDots,
  type CompleteDots,
  type Dot,
  DOTS,
  type Face,
  type FaceWith,
} from "../../landmarks/index.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import { type BareCode, isHair, standInOf } from "../../mapping/internal.js";
import { outline, type OutlineOptions, outlinePath } from "../../proportions/index.js";
import { type FlatPoint, length, type Point, px, type Side } from "../../units/index.js";
import type { Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import type { Spot } from "../canvas/box.js";
import {
  boxOfDot,
  type Brush,
  markerAt,
  pathData,
  strokeGroup,
  stretches,
} from "../canvas/brush.js";
import type { ColouredLabel, Layer } from "../canvas/layer.js";
import { MARKERS } from "../canvas/palette.js";
import { placed } from "../canvas/view.js";
import { shownLength } from "../canvas/figures.js";

/**
 * What a brow in a picture is: hair as it grows, a guess at it, what is planned, or what one of several captures
 * shows.
 */
export type BrowRole = GrownRole | "planned" | "capture";

/** What a face has for a brow: hair as it grows, or a detector's guess at it. */
export type GrownRole = "natural" | "guess";

export function grownRole(face: Face<"mm">, side: Side): GrownRole {
  return isHair(face, side) ? "natural" : "guess";
}

/** What a brow is called where it is not the planned one: as it grows, a detector's guess at it, or none. */
export function grownWord(face: Face<"mm">, side: Side): GrownRole | "bare" {
  const standIn = standInOf(face, side);
  if (standIn === undefined) return "natural";
  return BARE.includes(standIn.instead) ? "bare" : "guess";
}

const BARE: readonly string[] = ["mirrored-brow", "average-heights"] satisfies readonly BareCode[];

/** What a face has for a brow, by its borders. */
export function grownLayer(face: FaceWith<"mm", "brow">, side: Side, brush: Brush): Layer {
  return bordersLayer(face[side].brow, side, grownRole(face, side), brush);
}

/** What no hair is called, beside its upper border: last, as it may stand anywhere along it, unless it finds no place. */
export function guessNameLayer(face: FaceWith<"mm", "brow">, side: Side, brush: Brush): Layer {
  const word = grownWord(face, side);
  if (word === "natural") return { elements: [] };
  const { view, palette, words } = brush;
  const border = placed(face[side].brow.upper, view);
  const spotAt = (share: number): Spot => border[Math.round(share * (border.length - 1))] as Spot;
  const outwards = side === "right" ? -1 : 1;
  const name: ColouredLabel = {
    text: label(words, `line-${word}`),
    at: spotAt(1),
    orAt: [spotAt(0.5), spotAt(0)],
    towards: [
      [outwards, 0],
      [0, 1],
      [outwards * Math.SQRT1_2, Math.SQRT1_2],
      [0, -1],
    ],
    size: GUESS_SIZE * view.size,
    gap: view.size,
    clear: true,
    colour: palette.strokes.guess,
  };
  return { elements: [], labels: [name] };
}

/** Letters that name what is no hair, in steps. */
const GUESS_SIZE = 2.2;

/** A brow by its borders: a closed outline, or the upper border alone where no lower one is known. */
export function bordersLayer(
  brow: Brow<"mm">,
  side: Side,
  role: Exclude<BrowRole, "planned">,
  brush: Brush,
): Layer {
  const upper = placed(brow.upper, brush.view);
  const lower = brow.lower === undefined ? [] : placed(brow.lower, brush.view);
  const closed = lower.length > 0;
  const outline = [...upper, ...[...lower].reverse()];
  const data = [pathData(outline, closed)];
  return {
    elements: [strokeGroup(role, `${role} ${side}`, data, brush, fillOf(role, closed, brush))],
    borders: stretches(outline),
  };
}

export function plannedBrowLayer(
  dots: CompleteDots<"mm">,
  side: Side,
  shape: OutlineOptions,
  brush: Brush,
): Layer {
  const path = plannedPath(dots, shape, brush);
  const [data, fill] = [[curveData(path)], fillOf("planned", true, brush)];
  return {
    elements: [strokeGroup("planned", `planned ${side}`, data, brush, fill)],
    borders: stretches(spotsOf(path, LOOSE, brush)),
  };
}

/** The outline of a planned brow as the picture shows it, spot by spot. */
export function plannedSpots(
  dots: CompleteDots<"mm">,
  shape: OutlineOptions,
  brush: Brush,
): readonly Spot[] {
  return spotsOf(plannedPath(dots, shape, brush), CLOSE, brush);
}

/** How far straight pieces stray from a curve, in steps: where labels avoid it, where it is seen. */
const LOOSE = 0.2;
const CLOSE = 0.02;

/** How far an outline in a picture may stray from the true one, in steps: no eye sees that. */
const SEEN = 0.001;

function plannedPath(
  dots: CompleteDots<"mm">,
  shape: OutlineOptions,
  { view }: Brush,
): readonly Cubic<"px">[] {
  const place = (point: FlatPoint<"mm">): FlatPoint<"px"> => px(view.place(point));
  return mapPathWithin(outlinePath(outline(dots, shape)), place, length(SEEN * view.size));
}

function spotsOf(path: readonly Cubic<"px">[], strays: number, { view }: Brush): readonly Spot[] {
  return flatten(path, length(strays * view.size)).map(([x, y]): Spot => [x, y]);
}

/** Half of a dot's width, in steps. */
const DOT_RADIUS = 0.8;

/** The dots of a brow that are known, in the colour of what it is; those of the lower border are hollow. */
export function dotsLayer(dots: BrowDots<"mm">, side: Side, role: BrowRole, brush: Brush): Layer {
  const { view, palette } = brush;
  const known = DOT_NAMES.flatMap((dot) => {
    const at = dots[dot];
    return at === undefined ? [] : [{ dot, at, spot: view.place(at) }];
  });
  return {
    elements: known.map(({ dot, at, spot }) =>
      markerAt(
        spot,
        {
          shape: MARKERS[DOTS[dot].station],
          colour: palette.strokes[role],
          radius: DOT_RADIUS,
          hollow: DOTS[dot].border === "lower",
        },
        brush,
        titleOf(dot, side, at, brush.words),
        { class: "dot", "data-side": side, "data-dot": dot },
      ),
    ),
    closed: known.map(({ spot }) => boxOfDot(spot, 1.5 * DOT_RADIUS * view.size)),
  };
}

function titleOf(dot: Dot, side: Side, [x, y]: Point<"mm">, words: Words): string {
  return label(words, y < 0 ? "dot-below" : "dot-above", {
    side,
    dot,
    distance: shownLength(Math.abs(x), words),
    height: shownLength(Math.abs(y), words),
  });
}

/** On a photo the hair itself is to be seen; a guess is no area. */
function fillOf(role: BrowRole, closed: boolean, brush: Brush): string {
  return role !== "guess" && closed && !brush.onPhoto ? brush.palette.strokes[role] : "none";
}
