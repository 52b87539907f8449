import {
  deepPoint,
  eachSide,
  flatPoint,
  GeometryError,
  hasDepth,
  type Note,
  otherSide,
  type Point,
  type Polyline,
  type Side,
  type Sides,
} from "../../units/index.js";
import { correctIrises } from "./correct-irises.js";
import type { Face, FaceSide, LandmarkSource, SymmetricPoints, StandIn } from "../face/face.js";
import { type IrisPoints, irisesOf } from "./iris-points.js";
import type { Markup, MarkupAlare, MarkupSide, Place } from "./markup.js";
import {
  irisesExchanged,
  landmarkMissing,
  notesOnPicture,
  repeatsLeftOut,
  standInNotes,
} from "./markup-notes.js";
import type { MarkupOptions } from "./markup-options.js";
import { type MarkupPoints, type PicturePoints, readPoints } from "./markup-points.js";
import { requireSideOrder } from "../face/side-order.js";
import type { FaceNoteCode } from "../face/words.js";

/** A face in the photo, read from the points of a markup: every adapter is this with its table. */
export function faceFromMarkup<Alare extends string>(
  where: string,
  markup: Markup<Alare>,
  landmarks: MarkupPoints,
  options: MarkupOptions<Alare>,
): Face<"px"> {
  const points = readPoints(where, markup, landmarks, options);
  const notes: Note<FaceNoteCode>[] = [...notesOnPicture(options)];
  const alare = alareOf(where, markup, options);

  // A detector that saw a flipped picture takes the client's right for the left.
  const tableOf = (side: Side): Side => (options.mirrored === "frame" ? otherSide(side) : side);
  const reading: Reading = { points, labels: markup.labels, tableOf, notes };
  const irises = readIrises(reading, markup);
  const deep = points.some((point) => point !== undefined && hasDepth(point));
  const face: Face<"px"> = {
    ...eachSide((side) => ({
      ...readSide(reading, side, markup[tableOf(side)], alare?.[tableOf(side)]),
      ...irises[side],
    })),
    midline: readPlaces(reading, "midline", markup.midline),
    source: sourceOf(markup, options, deep),
    standIns: standInsOf(markup, alare),
    ...(deep ? { symmetricPoints: readRelief(reading, markup) } : {}),
    notes,
  };
  requireSideOrder(where, face, "down");
  return correctIrises({ ...face, notes: [...notes, ...standInNotes(face)] });
}

interface Reading {
  readonly points: PicturePoints;
  readonly labels: readonly string[] | undefined;
  /** The side of the markup's table in which a side of the client stands. */
  readonly tableOf: (side: Side) => Side;
  readonly notes: Note<FaceNoteCode>[];
}

function readSide(
  reading: Reading,
  side: Side,
  table: MarkupSide,
  alare: number | undefined,
): FaceSide<"px"> {
  const places = alare === undefined ? table.points : { ...table.points, alare };
  const upper = readLine(reading, `${side}.brow.upper`, table.browUpper);
  const lower = readLine(reading, `${side}.brow.lower`, table.browLower);
  const upperLid = readLine(reading, `${side}.upperLid`, table.upperLid);
  const lowerLid = readLine(reading, `${side}.lowerLid`, table.lowerLid);
  return {
    ...(readPlaces(reading, side, places) as FaceSide<"px">),
    ...(upperLid === undefined ? {} : { upperLid }),
    ...(lowerLid === undefined ? {} : { lowerLid }),
    ...(upper === undefined ? {} : { brow: lower === undefined ? { upper } : { upper, lower } }),
  };
}

function readPlaces(
  { points, labels, notes }: Reading,
  part: string,
  places: Readonly<Record<string, Place | undefined>>,
): Readonly<Record<string, Point<"px">>> {
  const found: Record<string, Point<"px">> = {};
  for (const [name, place] of Object.entries(places)) {
    if (place === undefined) continue;
    const point = pointAt(points, place);
    if (point === undefined) notes.push(landmarkMissing(`${part}.${name}`, place, points, labels));
    else found[name] = point;
  }
  return found;
}

function pointAt(points: PicturePoints, place: Place | undefined): Point<"px"> | undefined {
  if (place === undefined) return undefined;
  if (typeof place === "number") return points[place];
  return meanPoint(place.map((index) => points[index]));
}

function meanPoint(points: PicturePoints): Point<"px"> | undefined {
  let [x, y, depth, deep] = [0, 0, 0, true];
  for (const point of points) {
    if (point === undefined) return undefined;
    x += point[0];
    y += point[1];
    if (hasDepth(point)) depth += point[2];
    else deep = false;
  }
  const count = points.length;
  return deep ? deepPoint(x / count, y / count, depth / count) : flatPoint(x / count, y / count);
}

/** A line without missing points and repeats; none where one of its ends is missing. */
function readLine(
  { points, labels, notes }: Reading,
  name: string,
  indices: readonly number[] | undefined,
): Polyline<"px"> | undefined {
  if (indices === undefined) return undefined;
  const line = indices.map((index) => points[index]);
  const known = line.filter((point) => point !== undefined);
  const complete = line[0] !== undefined && line[line.length - 1] !== undefined;
  if (known.length < line.length) notes.push(landmarkMissing(name, indices, points, labels));
  const distinct = known.filter((point, index) => {
    const previous = known[index - 1];
    return previous === undefined || point[0] !== previous[0] || point[1] !== previous[1];
  });
  if (distinct.length < known.length) {
    notes.push(repeatsLeftOut(name, known.length - distinct.length));
  }
  return complete && distinct.length > 1 ? distinct : undefined;
}

function readIrises(
  { points, labels, tableOf, notes }: Reading,
  markup: Markup,
): Sides<IrisPoints> {
  if (markup.irises === undefined) return { right: {}, left: {} };
  const corners = eachSide((side) => {
    const { endocanthion, exocanthion } = markup[tableOf(side)].points;
    return {
      endocanthion: pointAt(points, endocanthion),
      exocanthion: pointAt(points, exocanthion),
    };
  });
  const table = markup.irises;
  const { irises, swapped } = irisesOf(
    points,
    eachSide((side) => table[tableOf(side)]),
    corners,
  );
  if (swapped) notes.push(irisesExchanged());
  eachSide((side) => {
    if (irises[side].pupil === undefined) {
      notes.push(landmarkMissing(`${side}.pupil`, [table[tableOf(side)].centre], points, labels));
    }
  });
  return irises;
}

function readRelief({ points, tableOf }: Reading, markup: Markup): SymmetricPoints<"px"> {
  return {
    pairs: markup.pairs.flatMap((pair) => {
      const right = points[pair[tableOf("right")]];
      const left = points[pair[tableOf("left")]];
      return right === undefined || left === undefined ? [] : [{ right, left }];
    }),
    middle: markup.middle.map((index) => points[index]).filter((point) => point !== undefined),
  };
}

function alareOf<Alare extends string>(
  where: string,
  markup: Markup<Alare>,
  options: MarkupOptions<Alare>,
): MarkupAlare | undefined {
  const usual = Object.keys(markup.alare)[0];
  const name = options.alare ?? usual;
  if (name === "none" || name === undefined) return undefined;
  const alare = (markup.alare as Readonly<Record<string, MarkupAlare>>)[name];
  if (alare !== undefined && Object.hasOwn(markup.alare, name)) return alare;
  throw new GeometryError("out-of-range", {
    where,
    field: "alare",
    value: name,
    need: [...Object.keys(markup.alare), "none"].map((known) => `"${known}"`).join(" or "),
  });
}

function sourceOf(markup: Markup, options: MarkupOptions<string>, deep: boolean): LandmarkSource {
  const { uncertainty = {}, ringFactor = markup.ringFactor } = options;
  const landmarks = { ...markup.uncertainty.landmarks, ...uncertainty.landmarks };
  return {
    markup: markup.name,
    uncertainty: { ...markup.uncertainty, ...uncertainty, landmarks },
    ringFactor,
    depth: deep ? markup.depth : "none",
  };
}

function standInsOf(markup: Markup, alare: MarkupAlare | undefined): readonly StandIn[] {
  if (alare === undefined) return markup.standIns;
  return [{ landmark: "alare", instead: alare.instead }, ...markup.standIns];
}
