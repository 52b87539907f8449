import {
  eachSide,
  hasDepth,
  type Note,
  otherSide,
  type Point,
  type Polyline,
  type Side,
  type Sides,
} from "../../units/index.js";
import { requireWord } from "../../units/internal.js";
import { withIrises } from "./correct-irises.js";
import { correctErrors } from "../errors/correct-errors.js";
import type { Face, FaceSide, LandmarkSource, SymmetricPoints, StandIn } from "../face/face.js";
import { type IrisPoints, irisesOf } from "./iris-points.js";
import type { IndexTable, MarkupSide, Place } from "./index-table.js";
import {
  irisesExchanged,
  landmarkMissing,
  notesOnPicture,
  repeatsLeftOut,
  standInNotes,
} from "./markup-notes.js";
import type { MarkupOptions } from "./markup-options.js";
import { type PicturePoints, pointAt, readPoints } from "./markup-points.js";
import type { MarkupPoints } from "./markups.js";
import { requireSideOrder } from "../face/side-order.js";
import type { FaceNoteCode } from "../face/notes.js";

/** A face in the photo, read from points whose landmarks stand where a table says. */
export function faceFromPoints(
  name: string,
  table: IndexTable,
  landmarks: MarkupPoints,
  options: MarkupOptions,
): Face<"px"> {
  const points = readPoints(table, landmarks, options);
  const notes: Note<FaceNoteCode>[] = [...notesOnPicture(options)];
  const choice = alareOf(table, options);
  const alare = choice === undefined ? undefined : table.alare[choice];

  // A detector that saw a flipped picture takes the client's right for the left.
  const tableOf = (side: Side): Side => (options.mirrored === "frame" ? otherSide(side) : side);
  const reading: Reading = { points, labels: table.labels, tableOf, notes };
  const irises = readIrises(reading, table);
  const deep = points.some((point) => point !== undefined && hasDepth(point));
  const face: Face<"px"> = {
    ...eachSide((side) => ({
      ...readSide(reading, side, table[tableOf(side)], alare?.[tableOf(side)]),
      ...irises[side],
    })),
    midline: readPlaces(reading, "midline", table.midline),
    source: sourceOf(name, table, options, deep),
    standIns: standInsOf(table, choice),
    ...(deep ? { symmetricPoints: readSymmetricPoints(reading, table) } : {}),
    notes,
  };
  requireSideOrder(face, "down");
  const read = withIrises({ ...face, notes: [...notes, ...standInNotes(face)] });
  return correctErrors(read, options, alare === Object.values(table.alare)[0]);
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
  table: IndexTable,
): Sides<IrisPoints> {
  const { irises: places } = table;
  if (places === undefined) return { right: {}, left: {} };
  const corners = eachSide((side) => {
    const { endocanthion, exocanthion } = table[tableOf(side)].points;
    return {
      endocanthion: pointAt(points, endocanthion),
      exocanthion: pointAt(points, exocanthion),
    };
  });
  const { irises, swapped } = irisesOf(
    points,
    eachSide((side) => places[tableOf(side)]),
    corners,
  );
  if (swapped) notes.push(irisesExchanged());
  eachSide((side) => {
    if (irises[side].pupil === undefined) {
      notes.push(landmarkMissing(`${side}.pupil`, [places[tableOf(side)].centre], points, labels));
    }
  });
  return irises;
}

function readSymmetricPoints(
  { points, tableOf }: Reading,
  table: IndexTable,
): SymmetricPoints<"px"> {
  return {
    pairs: table.pairs.flatMap((pair) => {
      const right = points[pair[tableOf("right")]];
      const left = points[pair[tableOf("left")]];
      return right === undefined || left === undefined ? [] : [{ right, left }];
    }),
    middle: table.middle.map((index) => points[index]).filter((point) => point !== undefined),
  };
}

/** The choice of points that stand for alare; undefined where none do. */
function alareOf(table: IndexTable, options: MarkupOptions): string | undefined {
  const choices = Object.keys(table.alare);
  const [usual = "none"] = choices;
  const { alare: name = usual } = options;
  requireWord("alare", name, [...choices, "none"]);
  return name === "none" ? undefined : name;
}

function sourceOf(
  name: string,
  table: IndexTable,
  options: MarkupOptions,
  deep: boolean,
): LandmarkSource {
  const { image, uncertainty = {}, ringFactor = table.ringFactor } = options;
  const landmarks = { ...table.uncertainty.landmarks, ...uncertainty.landmarks };
  return {
    markup: name,
    uncertainty: { ...table.uncertainty, ...uncertainty, landmarks },
    ringFactor,
    depth: deep ? table.depth : "none",
    ...(image && { picture: { width: image.width, height: image.height } }),
  };
}

function standInsOf(table: IndexTable, alare: string | undefined): readonly StandIn[] {
  if (alare === undefined) return table.standIns;
  return [{ landmark: "alare", instead: alare }, ...table.standIns];
}
