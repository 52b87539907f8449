import { distance, type Line, midpoint } from "../../geometry/index.js";
import type { FaceSide } from "../../landmarks/index.js";
import { boxAround, type Spot } from "../canvas/box.js";
import { type Brush, stretches } from "../canvas/brush.js";
import type { Layer } from "../canvas/layer.js";
import { placed } from "../canvas/view.js";
import { flatPoint, type FlatPoint, type Polyline } from "../../units/index.js";

/** The ellipse about one eye that a picture leaves free of lines and letters, in the face space. */
export interface EyeRoom {
  readonly centre: FlatPoint<"mm">;
  /** Unit vector from the inner to the outer corner. */
  readonly along: readonly [x: number, y: number];
  readonly halfWidth: number;
  readonly halfHeight: number;
}

/** Of the eye's width: holds the open lids and the crease above them. */
const HALF_HEIGHT_SHARE = 0.3;

export function eyeRoom({
  endocanthion,
  exocanthion,
}: Required<Pick<FaceSide<"mm">, "endocanthion" | "exocanthion">>): EyeRoom {
  const width = distance(endocanthion, exocanthion);
  const [x, y] = midpoint(endocanthion, exocanthion);
  return {
    centre: flatPoint(x, y),
    along: [(exocanthion[0] - endocanthion[0]) / width, (exocanthion[1] - endocanthion[1]) / width],
    halfWidth: width / 2,
    halfHeight: HALF_HEIGHT_SHARE * width,
  };
}

/** Where a line enters and leaves the room, as distances from its `through` point. */
export function passage(
  line: Line<"mm">,
  { centre, along, halfWidth, halfHeight }: EyeRoom,
): readonly [enters: number, leaves: number] | undefined {
  // Stretched so that the ellipse becomes the unit circle.
  const stretched = (x: number, y: number): readonly [number, number] => [
    (x * along[0] + y * along[1]) / halfWidth,
    (y * along[0] - x * along[1]) / halfHeight,
  ];
  const start = stretched(line.through[0] - centre[0], line.through[1] - centre[1]);
  const step = stretched(line.direction[0], line.direction[1]);
  const square = step[0] ** 2 + step[1] ** 2;
  const half = start[0] * step[0] + start[1] * step[1];
  const discriminant = half ** 2 - square * (start[0] ** 2 + start[1] ** 2 - 1);
  if (discriminant <= 0) return undefined;
  const root = Math.sqrt(discriminant);
  return [(-half - root) / square, (-half + root) / square];
}

/** An eye over which nothing is written, and nothing led. */
export function eyeRoomLayer(room: EyeRoom, brush: Brush): Layer {
  const { view } = brush;
  const clear = (CLEAR * view.size) / view.millimetre;
  const { halfWidth, halfHeight } = room;
  const wide = { ...room, halfWidth: halfWidth + clear, halfHeight: halfHeight + clear };
  const edge = placed(roomOutline(wide), view);
  return {
    elements: [],
    closed: [boxAround(placed(roomOutline(room), view))],
    barred: stretches([...edge, edge[0] as Spot]),
  };
}

/** How far leaders pass from an eye, its corners included, in steps. */
const CLEAR = 1.5;

export function roomOutline({ centre, along, halfWidth, halfHeight }: EyeRoom): Polyline<"mm"> {
  return Array.from({ length: 16 }, (_, index) => {
    const angle = (index * Math.PI) / 8;
    const [across, up] = [halfWidth * Math.cos(angle), halfHeight * Math.sin(angle)];
    return flatPoint(
      centre[0] + across * along[0] - up * along[1],
      centre[1] + across * along[1] + up * along[0],
    );
  });
}
