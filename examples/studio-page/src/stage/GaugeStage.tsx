import { flatPoint } from "brow-geometry/units";
import { withBasis } from "../appointment/appointment.js";
import type { Picture, Shot } from "../appointment/basis.js";
import { keep, kept, show } from "../appointment/history.js";
import type { Spot } from "./box.js";
import type { Handle } from "./handle.js";
import { pathOf } from "./place.js";
import { Stage } from "./Stage.js";
import { firstMark } from "./first-mark.js";
import { text } from "../words/language.js";

/** The whole photo, for two taps on marks of a ruler in it. */
export function GaugeStage({ shot, picture }: { readonly shot: Shot; readonly picture: Picture }) {
  const { gauge } = shot;
  const box = { x: 0, y: 0, width: picture.width, height: picture.height };
  const marks =
    gauge.kind === "ruler" ? [gauge.from, gauge.to] : firstMark.value ? [firstMark.value] : [];

  const tap = ([x, y]: Spot) => {
    const at = flatPoint<"px">(x, y);
    if (firstMark.value === undefined || gauge.kind === "ruler") {
      firstMark.value = at;
      keep(withBasis(kept.value, { ...shot, gauge: { kind: "irises" } }));
      return;
    }
    const ruler = { kind: "ruler", from: firstMark.value, to: at, length: DEFAULT_LENGTH } as const;
    firstMark.value = undefined;
    keep(withBasis(kept.value, { ...shot, gauge: ruler }));
  };

  const move = (id: string, [x, y]: Spot) => {
    const at = flatPoint<"px">(x, y);
    if (gauge.kind !== "ruler") firstMark.value = at;
    else show(withBasis(kept.value, { ...shot, gauge: { ...gauge, [id]: at } }));
  };

  return (
    <Stage
      label={text.value.stages.ruler}
      box={box}
      picture={picture}
      handles={marks.map((at, index): Handle => ({
        id: index === 0 ? "from" : "to",
        label: index === 0 ? text.value.handles.firstMark : text.value.handles.secondMark,
        at: [at[0], at[1]],
        look: "mark",
      }))}
      step={1}
      onMove={move}
      onDrop={keep}
      onTap={tap}
    >
      {() => (
        <path class="ruler" d={marks.length < 2 ? "" : pathOf(marks.map(([x, y]) => [x, y]))} />
      )}
    </Stage>
  );
}

/** Between both marks, in millimetres, until another length is chosen. */
const DEFAULT_LENGTH = 50;
