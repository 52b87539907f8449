import {
  type Choices,
  type Face,
  type FaceFrame,
  faceFrame,
  GeometryError,
  GUIDES,
  type Measured,
  type PlannableFace,
  requirePlannable,
} from "brow-geometry";
import { mapFace, type MeasureName } from "brow-geometry/landmarks";
import { mm, type Scale } from "brow-geometry/units";
import type { KnownErrors } from "../../src/landmarks/internal.js";
import { planAcross, readFace } from "../../src/mapping/dots/plan-dots.js";
import { causesOnPhoto } from "../../src/mapping/plan/plan-causes.js";
import { type Cause, type PlanReadings, readPlan } from "../../src/mapping/plan/read-plan.js";
import { onlyRead } from "../../src/mapping/plan/variation.js";
import { SIDES } from "../../src/units/internal.js";
import { ontoFace } from "../../src/symmetry/internal.js";
import {
  correctedFace,
  foundFace,
  type LondonFace,
  type MeasuredMarkup,
} from "../../tests/support/london-faces.js";
import { fitErrors } from "../error-model/fit-errors.js";

/** One thing read on a face as a detector found it, and as a hand drew it. */
export interface ComparedReading {
  readonly group: "measure" | "difference" | "mark";
  /** A measure, or the guide and the measure of its mark. */
  readonly name: string;
  readonly measure: MeasureName | "startToStart";
  readonly found: Measured;
  readonly drawn: Measured;
}

/** Reads unseen faces with what is known of a detector from all others. */
export function heldOut(
  faces: readonly LondonFace[],
  unseen: readonly LondonFace[],
  markup: MeasuredMarkup,
  guides: readonly GuidedChoices[] = [],
): readonly ComparedReading[] {
  const errors = fitErrors(
    faces.filter((face) => !unseen.includes(face)),
    markup,
  );
  return unseen.flatMap((face) =>
    compared(face, correctedFace(face, markup, errors), { [markup]: errors }, guides),
  );
}

/** Reads faces with the points as found, each as uncertain as its markup says. */
export function asFound(
  faces: readonly LondonFace[],
  markup: MeasuredMarkup,
): readonly ComparedReading[] {
  return faces.flatMap((face) => compared(face, foundFace(face, markup, false), {}, []));
}

/** Choices that between them aim once at every guide, and the guides that each is read for. */
export const EVERY_GUIDE: readonly GuidedChoices[] = guidesOf("arch").map((arch, index) => {
  // The first needs the edge of the iris, which not every markup has.
  const [start, tail] = [guidesOf("start")[index - 1], guidesOf("tail")[index - 1]];
  return {
    choices: {
      arch,
      // What a guide says, whatever hair lies past it.
      keepHair: mm(0),
      ...(start === undefined ? {} : { start }),
      ...(tail === undefined ? {} : { tail }),
    },
    read: [arch, start, tail].filter((guide) => guide !== undefined),
  };
});

interface GuidedChoices {
  readonly choices: Choices;
  readonly read: readonly GuideName[];
}

type GuideName = keyof typeof GUIDES;
type GuideOf<Mark> = {
  [Name in GuideName]: (typeof GUIDES)[Name]["mark"] extends Mark ? Name : never;
}[GuideName];

function guidesOf<Mark extends "start" | "arch" | "tail">(mark: Mark): readonly GuideOf<Mark>[] {
  const names = Object.keys(GUIDES) as GuideName[];
  return names.filter((name): name is GuideOf<Mark> => GUIDES[name].mark === mark);
}

const OF_MARK: { readonly [Mark in "start" | "arch" | "tail"]: readonly MeasureName[] } = {
  start: ["startDistance", "startHeight"],
  arch: ["archDistance", "archHeight"],
  tail: ["tailDistance", "tailHeight"],
};

function compared(
  face: LondonFace,
  seen: Face<"px">,
  known: KnownErrors,
  guides: readonly GuidedChoices[],
): readonly ComparedReading[] {
  const read = (choices: Choices): readonly [found: PlanReadings, drawn: PlanReadings] => [
    readingsOn(requirePlannable(seen), face.millimetres, choices, known, () => true),
    drawnReadings(face, choices),
  ];
  const [found, drawn] = read({});
  const apart = ({ measures }: PlanReadings["natural"]): Readings => ({
    startToStart: measures.startToStart,
  });
  const marks = guides.flatMap(({ choices, read: guided }) =>
    SIDES.flatMap((lead) => {
      const led = ifAny(() => read({ ...choices, lead }));
      return led === undefined
        ? []
        : guided.flatMap((guide) => {
            const [one, other] = led.map(({ planned }) => {
              const measures = planned.measures[lead];
              return Object.fromEntries(
                OF_MARK[GUIDES[guide].mark].map((name) => [name, measures[name]]),
              );
            }) as [Readings, Readings];
            return pairs("mark", one, other, `${guide}.`);
          });
    }),
  );
  return [
    ...SIDES.flatMap((side) =>
      pairs("measure", found.natural.measures[side], drawn.natural.measures[side]),
    ),
    ...pairs("measure", apart(found.natural), apart(drawn.natural)),
    ...pairs("difference", found.natural.differences, drawn.natural.differences),
    ...marks,
  ];
}

/** What both have a reading of. */
function pairs(
  group: ComparedReading["group"],
  found: Readings,
  drawn: Readings,
  prefix = "",
): readonly ComparedReading[] {
  return (Object.keys(found) as Name[]).flatMap((measure) => {
    const [value, truth] = [found[measure], drawn[measure]];
    if (value === undefined || truth === undefined) return [];
    return [{ group, name: `${prefix}${measure}`, measure, found: value, drawn: truth }];
  });
}

type Name = ComparedReading["measure"];
type Readings = { readonly [Each in Name]?: Measured | undefined };

const DRAWN = new WeakMap<LondonFace, Map<string, PlanReadings>>();

/** What is read on a face as drawn, once for all that is compared with it. */
function drawnReadings(face: LondonFace, choices: Choices): PlanReadings {
  const known = DRAWN.get(face) ?? new Map<string, PlanReadings>();
  DRAWN.set(face, known);
  const key = JSON.stringify(choices);
  const readings =
    known.get(key) ??
    readingsOn(requirePlannable(face.hand), face.millimetres, choices, {}, isOfHand);
  known.set(key, readings);
  return readings;
}

/** Whether a cause is the hand's: what finding an arch is off is in the detector's patterns, which were held against it. */
function isOfHand({ faceAt }: Cause): boolean {
  return faceAt?.(1).arches === undefined;
}

/** What a plan reads on a photo, its scale and its camera taken as known. */
function readingsOn(
  photo: PlannableFace<"px">,
  millimetres: number,
  choices: Choices,
  known: KnownErrors,
  counts: (cause: Cause) => boolean,
): PlanReadings {
  const scale: Scale = {
    from: "px",
    to: "mm",
    factor: millimetres,
    u: 0,
    source: "given",
    notes: [],
  };
  const frame: FaceFrame = faceFrame(photo, scale);
  const face = requirePlannable(mapFace(photo, ontoFace(frame)));
  const plan = planAcross(frame.midline.tiltU, readFace(face), choices);
  const truth = onlyRead({ face: plan.face, skin: plan.skin, pins: plan.choices.pins });
  const causes = causesOnPhoto(truth, frame, known).filter(counts);
  return readPlan(plan, truth, causes, choices.thickness === undefined);
}

/** What is read where there is an answer: a markup may lack a guide's landmark, a guide miss the brow. */
function ifAny<Answer>(question: () => Answer): Answer | undefined {
  try {
    return question();
  } catch (error) {
    if (error instanceof GeometryError) return undefined;
    throw error;
  }
}
