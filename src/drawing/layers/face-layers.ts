import { distance } from "../../geometry/index.js";
import { type Face, type FaceSide, type PointLandmark } from "../../landmarks/index.js";
import { MIDLINE_LANDMARKS } from "../../landmarks/internal.js";
import { deepPoint, flatPoint, hasDepth, type Point, type Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { label } from "../../words/internal.js";
import { type Box, isWithin, type Spot } from "../canvas/box.js";
import {
  boxOfDot,
  type Brush,
  markerAt,
  pathData,
  strokeGroup,
  stretches,
} from "../canvas/brush.js";
import { passages } from "../canvas/hatch.js";
import type { Layer } from "../canvas/layer.js";
import { MARKERS } from "../canvas/palette.js";
import { element, type SvgElement } from "../canvas/svg.js";
import { TYPE_SIZES } from "../canvas/text-size.js";
import { placed, seenDirection } from "../canvas/view.js";

/** Half of a landmark's cross, in steps. */
const CROSS_RADIUS = 1.1;

const SHOWN = ["endocanthion", "exocanthion", "alare", "cheilion"] as const;

/** Landmarks as crosses, approximated ones as rings; pupil and limbus are seen in the eye itself. */
export function landmarksLayer(face: Face<"mm">, box: Box, brush: Brush): Layer {
  const approximated = new Set(face.standIns?.map(({ landmark }) => landmark));
  const onSides = SIDES.flatMap((side) =>
    SHOWN.map((name) => ({ name, side, at: face[side][name] })),
  );
  const onMidline = MIDLINE_LANDMARKS.map((name) => {
    return { name, side: undefined, at: face.midline[name] };
  });
  const crosses = [...onSides, ...onMidline].flatMap(({ name, side, at }) => {
    if (at === undefined) return [];
    const room = boxOfDot(brush.view.place(at), CROSS_RADIUS * brush.view.size);
    return isWithin(room, box) ? [{ name, side, at, room }] : [];
  });
  const drawn = crosses.map((cross) =>
    landmarkCross({ ...cross, standIn: approximated.has(cross.name) }, brush),
  );
  return {
    elements: [element("g", { class: "landmarks" }, drawn)],
    closed: crosses.map(({ room }) => room),
  };
}

function landmarkCross(
  cross: {
    readonly name: PointLandmark;
    readonly side: Side | undefined;
    readonly at: Point<"mm">;
    readonly standIn: boolean;
  },
  brush: Brush,
): SvgElement {
  const { name, side, at, standIn } = cross;
  const { words } = brush;
  const title = standIn
    ? label(words, "approximated", { landmark: name })
    : words.terms.landmarks[name];
  return markerAt(
    brush.view.place(at),
    {
      shape: standIn ? "circle" : MARKERS.landmark,
      colour: brush.palette.strokes.landmark,
      radius: standIn ? 0.7 * CROSS_RADIUS : CROSS_RADIUS,
      hollow: standIn,
    },
    brush,
    side === undefined ? title : label(words, "of-side", { side, what: title }),
    {
      class: "landmark",
      "data-landmark": name,
      ...(side === undefined ? {} : { "data-side": side }),
    },
  );
}

/** The midline between two heights of the face, named at its lower end where there is a name. */
export function midlineLayer(
  { top, bottom, name }: { readonly top: number; readonly bottom: number; readonly name?: string },
  brush: Brush,
): Layer {
  const { view, palette } = brush;
  const line = placed([flatPoint(0, top), flatPoint(0, bottom)], view);
  const label = {
    at: line[1] as Spot,
    towards: [seenDirection([0, -1], view), seenDirection([1, 0], view)],
    size: TYPE_SIZES.label * view.size,
    gap: 0.9 * view.size,
    colour: palette.ink,
  };
  return {
    elements: [strokeGroup("midline", "midline", [pathData(line)], brush)],
    labels: name === undefined ? [] : [{ ...label, text: name }],
    strokes: stretches(line),
  };
}

/** One eye in outline, where no photo shows it: lids, and as much of the iris as they leave open. */
export function eyeLayer(
  side: Required<Pick<FaceSide<"mm">, "endocanthion" | "exocanthion">> & FaceSide<"mm">,
  brush: Brush,
): Layer {
  if (brush.onPhoto) return { elements: [] };
  const { upperLid, lowerLid, pupil, limbusMedial, limbusLateral } = side;
  const lids = [upperLid, lowerLid].flatMap((lid) =>
    lid === undefined ? [] : [placed(lid, brush.view)],
  );
  const radius =
    limbusMedial === undefined || limbusLateral === undefined
      ? undefined
      : distance(limbusMedial, limbusLateral) / 2;
  const between = [...(upperLid ?? []), ...[...(lowerLid ?? [])].reverse()];
  const open = ([x, y]: Point<"mm">): boolean =>
    upperLid === undefined ||
    lowerLid === undefined ||
    passages(between, y).some(([from, to]) => from < x && x < to);
  const iris =
    pupil === undefined || radius === undefined
      ? []
      : runs(circle(pupil, radius), open).map((run) => placed(run, brush.view));
  const data = [...lids, ...iris].map((spots) => pathData(spots));
  return {
    elements: [
      strokeGroup("landmark", "eye", data, brush),
      ...(pupil === undefined || !open(pupil)
        ? []
        : [
            markerAt(
              brush.view.place(pupil),
              { shape: "circle", colour: brush.palette.strokes.landmark, radius: 0.6 },
              brush,
              brush.words.terms.landmarks.pupil,
            ),
          ]),
    ],
    strokes: lids.flatMap(stretches),
  };
}

/** Steps round an iris: each is well under a line's width. */
const IRIS_STEPS = 64;

function circle(centre: Point<"mm">, radius: number): readonly Point<"mm">[] {
  return Array.from({ length: IRIS_STEPS + 1 }, (_, index) => {
    const angle = (2 * Math.PI * index) / IRIS_STEPS;
    const [x, y] = [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
    // As deep as its pupil: on a turned head it would lie beside it.
    return hasDepth(centre) ? deepPoint(x, y, centre[2]) : flatPoint(x, y);
  });
}

/** The unbroken runs of points that pass a test; single points draw nothing and drop out. */
function runs(
  points: readonly Point<"mm">[],
  passes: (point: Point<"mm">) => boolean,
): readonly (readonly Point<"mm">[])[] {
  const found: Point<"mm">[][] = [[]];
  for (const point of points) {
    if (passes(point)) found[found.length - 1]?.push(point);
    else found.push([]);
  }
  return found.filter((run) => run.length > 1);
}
