import {
  type Brow,
  type Face,
  type FaceSide,
  type Point,
  type Polyline,
  scaleFromIris,
  toFace,
  turnToFront,
} from "brow-geometry";
import { type DeepPoint, deepPoint, hasDepth } from "brow-geometry/units";
import { mapFace, type SymmetricPoints } from "brow-geometry/landmarks";
import { AS_FOUND, faceOfMesh, meshSamples } from "./sample-faces.js";
import { raisedHead } from "./synthetic-head.js";

/**
 * Real heads made exactly symmetric, in millimetres: those of the sample photos that are turned by at
 * most 10°, seen from their front and averaged with their mirror image. Whatever they then compare as
 * uneven is not theirs.
 */
export function symmetricMeshes(): readonly Face<"mm">[] {
  return meshSamples.flatMap((sample) => {
    const face = faceOfMesh(sample, AS_FOUND);
    try {
      const frame = turnToFront(face, scaleFromIris(face));
      return [raisedHead(withItsMirrorImage(toFace(face, frame)), frame.turning?.pitch ?? 0)];
    } catch {
      return [];
    }
  });
}

/** A head as it shows when it is turned towards the client's left, by a depth that is scaled wrongly. */
export function turnedAndScaled(head: Face<"mm">, yaw: number, depthTimes = 1): Face<"mm"> {
  const angle = (yaw * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return mapFace(head, (point: Point<"mm">) => {
    const [x, y, depth] = deep(point);
    return deepPoint(x * cosine + depth * sine, y, depthTimes * (depth * cosine - x * sine));
  });
}

type Space = DeepPoint<"mm">;

function withItsMirrorImage({
  right,
  left,
  midline,
  symmetricPoints,
  ...rest
}: Face<"mm">): Face<"mm"> {
  const half: Record<string, Space | Brow<"mm">> = {};
  for (const [name, own] of Object.entries(left) as [keyof FaceSide<"mm">, unknown][]) {
    const other = right[name];
    if (name === "brow" && left.brow !== undefined && right.brow !== undefined) {
      half[name] = meanBrow(left.brow, right.brow);
    } else if (isPoint(own) && isPoint(other)) {
      half[name] = mean(own, other);
    }
  }
  const side = half as FaceSide<"mm">;
  return {
    ...rest,
    left: side,
    right: mapFace({ right: side, left: {}, midline: {} }, flipped).right,
    midline: mapFace({ right: {}, left: {}, midline }, onMidline).midline,
    ...(symmetricPoints === undefined ? {} : { symmetricPoints: meanPoints(symmetricPoints) }),
  };
}

function meanPoints({ pairs, middle }: SymmetricPoints<"mm">): SymmetricPoints<"mm"> {
  return {
    pairs: pairs.map(({ right, left }) => {
      const own = mean(left, right);
      return { left: own, right: flipped(own) };
    }),
    middle: middle.map(onMidline),
  };
}

function meanBrow(own: Brow<"mm">, other: Brow<"mm">): Brow<"mm"> {
  const line = (one: Polyline<"mm">, two: Polyline<"mm">): Polyline<"mm"> =>
    one.map((point, index) => mean(point, two[index] ?? point));
  return { upper: line(own.upper, other.upper), lower: line(own.lower ?? [], other.lower ?? []) };
}

/** The middle between a point of the left and its partner's mirror image. */
function mean(own: Point<"mm">, other: Point<"mm">): Space {
  const [x, y, depth] = deep(own);
  const [otherX, otherY, otherDepth] = deep(other);
  return deepPoint((x - otherX) / 2, (y + otherY) / 2, (depth + otherDepth) / 2);
}

function flipped(point: Point<"mm">): Space {
  const [x, y, depth] = deep(point);
  return deepPoint(-x, y, depth);
}

function onMidline(point: Point<"mm">): Space {
  const [, y, depth] = deep(point);
  return deepPoint(0, y, depth);
}

function deep(point: Point<"mm">): Space {
  if (hasDepth(point)) return point;
  throw new Error("a point of the mesh has depth");
}

function isPoint(value: unknown): value is Point<"mm"> {
  return Array.isArray(value) && typeof value[0] === "number";
}
