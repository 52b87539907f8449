import { batch, computed } from "@preact/signals";
import { type BrowPlan, drawPlan, type Pin, type Side, type Theme } from "brow-geometry";
import { nearestDot, placeUnder } from "brow-geometry/drawing";
import { type Dot, DOTS } from "brow-geometry/landmarks";
import { eachSide } from "brow-geometry/units";
import { useMemo } from "preact/hooks";
import { withChoices } from "../appointment/appointment.js";
import { pictureOf } from "../appointment/basis.js";
import { change, isMoving, keep, kept, show } from "../appointment/history.js";
import { nearestPin, withPin } from "../planning/drag.js";
import { inHand, type Mapped, mapped } from "../planning/map.js";
import { drawingFor, linesShown, said } from "../page-state.js";
import { useTheme } from "../look/use-theme.js";
import { boxAround, boxOf, type Spot } from "./box.js";
import { FaceSketch } from "./FaceSketch.js";
import type { Handle } from "./handle.js";
import { Arrows, Outlines } from "./PlanLayer.js";
import { hairPath, pathOf, type Place, placeOf, plannedPath, spotsOf } from "./place.js";
import { Stage } from "./Stage.js";
import { SIDES } from "./sides.js";
import { NARROWEST, type Room, useRoom } from "./use-room.js";
import { figure, text, words } from "../words/language.js";

const DOT_PLACES = SIDES.flatMap((side) =>
  (Object.keys(DOTS) as readonly Dot[]).map((dot) => ({ side, dot })),
);

/** Room around eyes, nose and brows, in millimetres. */
const MARGINS = { top: 15, side: 10, bottom: 6 };
/** What an arrow key moves a dot by, in millimetres: what a pencil draws. */
const STEP = 0.5;

/**
 * The map over the photo, its dots under the finger. While one is dragged, the outlines and dots follow the plan by
 * themselves; all else belongs to the plan at rest.
 */
export function PlanStage({ atRest }: { readonly atRest: Mapped }) {
  const { plan } = atRest;
  const place = useMemo(() => placeOf(plan), [plan]);
  const perMm = 1 / (plan.frame?.scale.factor ?? 1);
  const picture = kept.value.map && pictureOf(kept.value.map);
  const theme = useTheme();
  const room = useRoom();
  const hair = useMemo(() => eachSide((side) => hairPath(plan, side, place)), [place]);
  const moving = useMemo(() => {
    const planInHand = () => inHand.value?.plan ?? plan;
    return {
      planned: eachSide((side) => computed(() => plannedPath(planInHand(), side, place))),
      spots: computed(() => spotsOfDots(planInHand(), place)),
    };
  }, [place]);
  const handles = useMemo(() => handlesOf(atRest, place), [atRest, place, words.value]);
  const drawing = useMemo(
    () => (linesShown.value ? linesOf(atRest, picture, theme, room) : undefined),
    [atRest, picture, theme, room, linesShown.value, words.value],
  );
  // The view is that of the face: it holds still while the plan changes.
  const box = useMemo(
    () => boxOf(drawing ?? "") ?? browBox(plan.face, place, perMm),
    [drawing, atRest.input],
  );

  const move = (id: string, at: Spot) =>
    batch(() => {
      const [side, dot] = id.split(" ") as [Side, Dot];
      const asked = { side, dot, at: placeUnder(plan, at) };
      pin(asked);
      // No brow can have the dot where the finger is: it stops as near as one can.
      const isHeld = mapped.value === undefined;
      if (isHeld) pin(nearestPin(atRest, asked));
      said.value = isHeld ? text.value.stopsHere : "";
    });

  return (
    <Stage
      label={text.value.stages.map}
      box={box}
      picture={picture}
      {...(drawing !== undefined && { drawing })}
      handles={handles}
      moving={moving.spots}
      step={STEP * perMm}
      pick={(at, reach) => {
        const near = nearestDot(plan, at, reach);
        return near && `${near.side} ${near.dot}`;
      }}
      onMove={move}
      onLine={drawingFor.value && keepArea}
      onDrop={keep}
    >
      {(unit) => (
        <>
          {picture === undefined && drawing === undefined && (
            <FaceSketch face={plan.face} place={place} />
          )}
          {kept.value.areas.map(({ aim, edge }, index) => (
            <path key={index} class={`area ${aim}`} d={pathOf(edge, true)} />
          ))}
          <Outlines hair={hair} planned={moving.planned} />
          {!isMoving.value && drawing === undefined && (
            <Arrows plan={plan} place={place} box={box} unit={unit} />
          )}
        </>
      )}
    </Stage>
  );
}

/** An area needs room: fewer corners are a tap. */
const LEAST_CORNERS = 4;

/** Keeps what a finger has drawn around; the next touch means a dot again. */
function keepArea(edge: readonly Spot[]): void {
  const aim = drawingFor.value;
  if (aim === undefined || edge.length < LEAST_CORNERS) return;
  change((now) => ({ ...now, areas: [...now.areas, { aim, edge }] }));
  drawingFor.value = undefined;
}

/** Shows the map with one more pin. */
function pin(asked: Pin): void {
  show(withChoices(kept.value, { choices: withPin(kept.value.choices, asked) }));
}

/** Guides, midline and lengths, as the library draws them. */
function linesOf(
  map: Mapped,
  picture: { readonly width: number; readonly height: number } | undefined,
  theme: Theme,
  { width, height }: Room,
): string {
  const look = { view: "face", legend: false, words: words.value, screen: { width } } as const;
  const { plan } = map;
  // That the photo will not do stands beside the picture, not across the eyes.
  const cautions = plan.cautions.filter(({ values }) => values.severity !== "retake");
  const drawing =
    picture === undefined
      ? drawPlan(plan, { ...look, theme })
      : drawPlan(
          { ...plan, cautions },
          {
            ...look,
            photo: { width: picture.width, height: picture.height },
            theme: "transparent",
          },
        );
  // A picture that is too high for its room is shown narrower than that: its letters must be larger.
  const box = boxOf(drawing);
  const shown = box === undefined ? width : (height * box.width) / box.height;
  return shown >= width || width === NARROWEST
    ? drawing
    : linesOf(map, picture, theme, { width: Math.max(NARROWEST, Math.floor(shown)), height });
}

function browBox(face: BrowPlan["face"], place: Place, perMm: number) {
  const { top, side, bottom } = MARGINS;
  const margins = { top: top * perMm, side: side * perMm, bottom: bottom * perMm };
  return boxAround(spotsOf(face, place), margins);
}

/** A handle for each dot; those that wishes have moved are not the artist's pins. */
function handlesOf({ plan }: Mapped, place: Place): readonly Handle[] {
  const { pins = [] } = kept.value.choices;
  const spots = spotsOfDots(plan, place);
  return DOT_PLACES.map(({ side, dot }, index): Handle => {
    const [x, y] = plan.dots[side][dot];
    const isPinned = pins.some((pin) => pin.side === side && pin.dot === dot);
    const { sides, dots } = words.value.terms;
    const name = text.value.handles.placed(
      `${sides[side]} ${dots[dot]}`,
      figure(Math.abs(x), 1),
      figure(y, 1),
    );
    return {
      id: `${side} ${dot}`,
      label: isPinned ? text.value.handles.pinned(name) : name,
      at: spots[index] ?? [0, 0],
      look: isPinned ? "pinned" : "dot",
    };
  });
}

function spotsOfDots({ dots }: BrowPlan, place: Place): readonly Spot[] {
  return DOT_PLACES.map(({ side, dot }) => place(dots[side][dot]));
}
