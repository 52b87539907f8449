import {
  depthAt,
  GUIDES,
  type LandmarkName,
  mapFace,
  type PointMap,
  type Skin,
  skinUncertainty,
} from "../../landmarks/index.js";
import { deepen, errorSources, withMoves } from "../../landmarks/internal.js";
import type { FaceFrame, Turning } from "../../symmetry/index.js";
import {
  BROW_PROMINENCE,
  intoSpace,
  MIDLINE_PAIRS,
  MIDLINE_POINTS,
  spaceOf,
  type SpaceShift,
  type TurningOffset,
  turningShift,
} from "../../symmetry/internal.js";
import { deepPoint, flatPoint, hasDepth, type Point, type Polyline } from "../../units/index.js";
import { keysOf, toRadians } from "../../units/internal.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { Cause, Variation } from "./read-plan.js";

/** Landmarks on whose place a plan depends once the face space is given: those of guides and of readings. */
const PLANNED_ON: readonly LandmarkName[] = /* @__PURE__ */ (() => [
  ...new Set<LandmarkName>([
    ...keysOf(GUIDES).flatMap((guide): readonly LandmarkName[] => GUIDES[guide].through),
    "limbusLateral",
    "pupil",
    "upperLid",
    "brow",
  ]),
])();

/** What is uncertain of a plan in a face space that is given: landmarks, and how the skin falls back. */
export function causesOnFace(plan: Variation): readonly Cause[] {
  const truth = onlyRead(plan);
  return [...landmarkCauses(truth, PLANNED_ON), skinCause(truth, undefined)];
}

/**
 * What is uncertain of a plan on a photo: the face space too. Its midline follows the landmarks that it
 * was fitted to, or is as uncertain as it was given; its level follows the inner eye corners.
 */
export function causesOnPhoto(plan: Variation, frame: FaceFrame): readonly Cause[] {
  const truth = onlyRead(plan);
  const { midline, scale, turning } = frame;
  const { method } = midline;
  const errs =
    (map: (amount: number) => PointMap<"mm", "mm">): Cause =>
    (amount) =>
      seenBy(map(amount), truth);
  const causes = [
    skinCause(truth, turning),
    sizeCause(truth, scale.u / scale.factor),
    ...cameraCauses(truth, frame).map(errs),
  ];
  if (turning === undefined && method !== "given" && method !== "plane") {
    const space = (face: PlannableFace): SpaceShift => spaceOf(face, method);
    return [...landmarkCauses(truth, PLANNED_ON, space), ...spaceCauses(truth, space), ...causes];
  }
  const shift = midline.throughU * scale.factor;
  return [
    ...landmarkCauses(truth, PLANNED_ON, levelOf),
    ...causes,
    errs((amount) => intoSpace({ x: 0, y: 0, lean: amount * toRadians(midline.tiltU) })),
    errs((amount) => intoSpace({ x: amount * shift, y: 0, lean: 0 })),
    ...(turning === undefined
      ? []
      : [errs((amount) => turnedBy(turning, { yaw: amount * turning.yawU, depth: 0 }))]),
  ];
}

/** Every independent error of the landmarks that are read, and of the space that hangs on them. */
function landmarkCauses(
  { face, skin, pins }: Variation,
  read: readonly LandmarkName[],
  spaceIn?: (face: PlannableFace) => SpaceShift,
): readonly Cause[] {
  const own = spaceIn?.(face);
  return errorSources(face, read).map((source): Cause => (amount) => {
    const moved = { face: withMoves(face, source, amount) as PlannableFace, skin, pins };
    if (spaceIn === undefined || own === undefined || isInPlace(moved.face, face)) return moved;
    return seenBy(intoSpace(between(own, spaceIn(moved.face))), moved);
  });
}

/** Whether nothing was moved that a space is laid through. */
function isInPlace(moved: PlannableFace, face: PlannableFace): boolean {
  return MIDLINE_PAIRS.every(
    (name) => moved.right[name] === face.right[name] && moved.left[name] === face.left[name],
  );
}

/** Landmarks on whose place the face space depends, and nothing else. */
function onlyFitted(): readonly LandmarkName[] {
  return [...MIDLINE_PAIRS, ...MIDLINE_POINTS].filter((name) => !PLANNED_ON.includes(name));
}

/**
 * The errors of landmarks that only the midline is fitted to. However many they are, they move the whole
 * space, sideways, up and by leaning: three causes that are independent of each other hold them all.
 */
function spaceCauses(
  truth: Variation,
  spaceIn: (face: PlannableFace) => SpaceShift,
): readonly Cause[] {
  const { face } = truth;
  const shifts = errorSources(face, onlyFitted()).map((source) => {
    const spaceAt = (amount: number): SpaceShift =>
      spaceIn(withMoves(face, source, amount) as PlannableFace);
    const { x, y, lean } = between(spaceAt(-1), spaceAt(1));
    return [x / 2, y / 2, lean / 2] as [number, number, number];
  });
  // Axis by axis what all of them do together, and then what that leaves of each (Gram and Schmidt).
  return AXES.map((axis): Cause => {
    const size = Math.hypot(...shifts.map((shift) => shift[axis])) || 1;
    const together = AXES.map((other) =>
      shifts.reduce((sum, shift) => sum + (shift[axis] / size) * shift[other], 0),
    );
    for (const shift of shifts) {
      const share = shift[axis] / size;
      for (const other of AXES) shift[other] -= share * (together[other] as number);
    }
    const [x, y, lean] = together as [number, number, number];
    return (amount) =>
      seenBy(intoSpace({ x: amount * x, y: amount * y, lean: amount * lean }), truth);
  });
}

const AXES = [0, 1, 2] as const;

function between(one: SpaceShift, other: SpaceShift): SpaceShift {
  return { x: other.x - one.x, y: other.y - one.y, lean: other.lean - one.lean };
}

/** A space whose midline does not hang on the landmarks: its level does. */
function levelOf({ right, left }: PlannableFace): SpaceShift {
  return { x: 0, y: (right.endocanthion[1] + left.endocanthion[1]) / 2, lean: 0 };
}

/** How far the skin falls back; where a head was turned, its depth entered the turning too. */
function skinCause(truth: Variation, turning: FaceFrame["turning"]): Cause {
  const u = skinUncertainty(truth.skin);
  return (amount) => {
    const skin = deepen(truth.skin, 1 + amount * u);
    if (turning === undefined) return { ...truth, skin };
    return seenBy(turnedBy(turning, { yaw: 0, depth: amount * u }), truth, skin);
  };
}

/** Where points lie if the head was turned otherwise than it was taken to be. */
function turnedBy(turning: Turning, by: TurningOffset): PointMap<"mm", "mm"> {
  return (point) => {
    const x = point[0] + turningShift(point, turning, by);
    return hasDepth(point) ? deepPoint<"mm">(x, point[1], point[2]) : flatPoint(x, point[1]);
  };
}

/** The size of the whole face. */
function sizeCause(truth: Variation, relativeU: number): Cause {
  return (amount) => {
    const times = 1 + amount * relativeU;
    return seenBy(
      enlargedBy(() => times),
      truth,
      deepen(truth.skin, 1, times),
    );
  };
}

function enlargedBy(times: (point: Point<"mm">, onSkin: boolean) => number): PointMap<"mm", "mm"> {
  return (point, landmark) => {
    const by = times(point, landmark === "brow" && !hasDepth(point));
    const [x, y] = [by * point[0], by * point[1]];
    return hasDepth(point) ? deepPoint<"mm">(x, y, by * point[2]) : flatPoint<"mm">(x, y);
  };
}

/**
 * How far away the camera was, and how much nearer to it brows without depth lie: what perspective takes
 * a place to be larger by, in shares.
 */
function cameraCauses(
  { skin }: Variation,
  { scale, camera }: FaceFrame,
): readonly ((amount: number) => PointMap<"mm", "mm">)[] {
  if (camera === undefined) return [];
  const distanceU = scale.cameraDistance?.u ?? 0;
  const farther = (amount: number): PointMap<"mm", "mm"> =>
    enlargedBy((point, onSkin) => {
      const modelled = onSkin ? camera.prominence + depthAt(point, skin) : 0;
      const depth = hasDepth(point) ? point[2] : modelled;
      return 1 + (amount * depth * distanceU) / camera.distance ** 2;
    });
  const nearer = (amount: number): PointMap<"mm", "mm"> =>
    enlargedBy((_, onSkin) => (onSkin ? 1 - (amount * BROW_PROMINENCE.u) / camera.distance : 1));
  // How near the brows lie is the average's where no depth says it.
  return camera.skin.kind === "fitted" ? [farther] : [farther, nearer];
}

/**
 * A face without what no reading and no midline looks at, such as the points of a whole mesh; landmarks in
 * one order, since sums in another differ in the last bits, and a record replays to the last one.
 */
function onlyRead(plan: Variation): Variation {
  const { symmetricPoints: _, right, left, midline, ...rest } = plan.face;
  const face = { ...rest, right: sideRead(right), left: sideRead(left), midline: sorted(midline) };
  return { ...plan, face };
}

function sideRead(side: PlannableFace["left"]): PlannableFace["left"] {
  const { lowerLid: _, upperLid, ...read } = sorted(side);
  const [x] = side.pupil ?? side.exocanthion;
  return upperLid === undefined ? read : { ...read, upperLid: stretchAround(x, upperLid) };
}

function sorted<Part extends object>(part: Part): Part {
  const entries = Object.entries(part).sort(([one], [other]) => (one < other ? -1 : 1));
  return Object.fromEntries(entries) as Part;
}

/** The two points of a line on either side of an x, or of its nearer end, and one more beyond each. */
function stretchAround(x: number, line: Polyline<"mm">): Polyline<"mm"> {
  const [first, last] = [line[0]?.[0] ?? 0, line[line.length - 1]?.[0] ?? 0];
  const outwards = Math.sign(last - first);
  const next = line.findIndex((point) => outwards * (point[0] - x) > 0);
  const after = next < 0 ? line.length : next;
  return line.slice(Math.max(0, after - 2), Math.max(after + 2, 2));
}

/** A face seen otherwise, with the pins that were set on it. */
function seenBy(
  map: PointMap<"mm", "mm">,
  { face, skin: own, pins }: Variation,
  skin: Skin = own,
): Variation {
  return {
    face: mapFace<"mm", "mm">(face, map) as PlannableFace,
    skin,
    pins: pins.map((pin) => ({ ...pin, at: map(pin.at, "brow") })),
  };
}
