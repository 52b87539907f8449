import type { Side } from "brow-geometry";
import { basisAtHand, withBasis } from "../appointment/appointment.js";
import type { RulerFace } from "../appointment/basis.js";
import { keep, kept, show } from "../appointment/history.js";
import { faceOf, isReadable, type SideReadings } from "../appointment/readings.js";
import { boxAround, type Spot } from "./box.js";
import { FaceSketch } from "./FaceSketch.js";
import type { Handle } from "./handle.js";
import { ON_PAPER, pathOf, spotsOf } from "./place.js";
import { Stage } from "./Stage.js";
import { SIDES } from "./sides.js";
import { figure, text, words } from "../words/language.js";

const PLACES = ["start", "arch", "tail"] as const;
type ReadPlace = (typeof PLACES)[number];

const MARGINS = { top: 12, side: 8, bottom: 6 };
/** Half a millimetre: what a ruler shows. */
const STEP = 0.5;

/** The plain face as the ruler has read it; its dots can be dragged instead of stepped. */
export function ReadingsStage({ basis }: { readonly basis: RulerFace }) {
  const { readings, bare } = basis;
  const grown = SIDES.filter((side) => !bare[side]);
  const face = faceOf(readings);
  // The view holds still while a dot moves.
  const atRest = basisAtHand(kept.value);
  const still = atRest?.kind === "ruler" ? faceOf(atRest.readings) : face;
  const box = boxAround(spotsOf(still, ON_PAPER), MARGINS);

  const move = (id: string, [x, y]: Spot) => {
    const [side, place] = id.split(" ") as [Side, ReadPlace];
    const read: Partial<SideReadings> = {
      [`${place}Distance`]: stepped(Math.abs(x)),
      [`${place}Height`]: stepped(-y),
    };
    const changed = { ...readings, [side]: { ...readings[side], ...read } };
    // Where no brow has its dots so, they stop.
    if (isReadable(changed)) show(withBasis(kept.value, { ...basis, readings: changed }));
  };

  return (
    <Stage
      label={text.value.stages.plain}
      box={box}
      picture={undefined}
      handles={grown.flatMap((side) =>
        PLACES.map((place): Handle => {
          const [distance, height] = [
            readings[side][`${place}Distance`],
            readings[side][`${place}Height`],
          ];
          const out = side === "left" ? 1 : -1;
          return {
            id: `${side} ${place}`,
            label: text.value.handles.placed(
              `${words.value.terms.sides[side]} ${text.value.handles[place]}`,
              figure(distance, 1),
              figure(height, 1),
            ),
            at: [out * distance, -height],
            look: "border",
          };
        }),
      )}
      step={STEP}
      onMove={move}
      onDrop={keep}
    >
      {() => (
        <>
          <FaceSketch face={face} place={ON_PAPER} />
          {grown.map((side) => {
            const { upper, lower = [] } = face[side].brow;
            const spots = [...upper, ...[...lower].reverse()].map((point) => ON_PAPER(point));
            return <path key={side} class="border" d={pathOf(spots, true)} />;
          })}
        </>
      )}
    </Stage>
  );
}

function stepped(value: number): number {
  return Math.round(value / STEP) * STEP;
}
