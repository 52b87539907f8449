import type { Side } from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { withBasis } from "../appointment/appointment.js";
import type { Borders, Shot } from "../appointment/basis.js";
import { keep, kept, show } from "../appointment/history.js";
import { boxAround, type Spot } from "./box.js";
import { FaceSketch } from "./FaceSketch.js";
import type { Handle } from "./handle.js";
import { AS_IT_IS, pathOf } from "./place.js";
import { Stage } from "./Stage.js";
import { text } from "../words/language.js";

type Border = "upper" | "lower";

/** One brow, large, with the points of its borders to be pulled onto the hair. */
export function TraceStage({ shot, side }: { readonly shot: Shot; readonly side: Side }) {
  const { found, hair, bare, picture } = shot;
  const { upper, lower } = hair[side];
  const width = Math.abs((upper.at(-1)?.[0] ?? 0) - (upper[0]?.[0] ?? 0));
  const room = 0.22 * width;
  const eye = [found[side].endocanthion, found[side].exocanthion].flatMap((point) =>
    point === undefined ? [] : [AS_IT_IS(point)],
  );
  // The box holds still while points move: it is drawn around the brow as it was found.
  const first = found[side].brow ?? hair[side];
  const spots = [...first.upper, ...(first.lower ?? [])].map((point) => AS_IT_IS(point));
  const box = boxAround([...spots, ...eye], { top: room, side: room, bottom: room / 2 });

  const move = (id: string, [x, y]: Spot) => {
    const [border, index] = id.split(" ") as [Border, string];
    const moved = hair[side][border].map((point, at) =>
      at === Number(index) ? flatPoint<"px">(x, y) : point,
    );
    const borders: Borders = { ...hair[side], [border]: moved };
    show(withBasis(kept.value, { ...shot, hair: { ...hair, [side]: borders } }));
  };

  return (
    <Stage
      label={text.value.stages.borders[side]}
      box={box}
      picture={picture}
      handles={bare[side] ? [] : handlesOf(hair[side], side)}
      step={width / 100}
      onMove={move}
      onDrop={keep}
    >
      {() => (
        <>
          {picture === undefined && <FaceSketch face={found} place={AS_IT_IS} />}
          {!bare[side] && (
            <>
              <path class="border" d={pathOf(upper.map((point) => AS_IT_IS(point)))} />
              <path class="border" d={pathOf(lower.map((point) => AS_IT_IS(point)))} />
            </>
          )}
        </>
      )}
    </Stage>
  );
}

function handlesOf(borders: Borders, side: Side): readonly Handle[] {
  return (["upper", "lower"] as const).flatMap((border) =>
    borders[border].map((point, index): Handle => ({
      id: `${border} ${index}`,
      label: text.value.handles.border(text.value.touching[side], border, index + 1),
      at: AS_IT_IS(point),
      look: "border",
    })),
  );
}
