import type { Side } from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { withBasis } from "../appointment/appointment.js";
import type { Picture, Shot } from "../appointment/basis.js";
import { keep, kept, show } from "../appointment/history.js";
import type { Spot } from "./box.js";
import { FaceSketch } from "./FaceSketch.js";
import type { Handle } from "./handle.js";
import { AS_IT_IS } from "./place.js";
import { Stage } from "./Stage.js";
import { SIDES } from "./sides.js";
import { text, words } from "../words/language.js";

const POINTS = ["endocanthion", "exocanthion", "alare"] as const;
type PointName = (typeof POINTS)[number];

/** Eye corners and nose wings by hand, where no face was found. */
export function EyesStage({ shot, picture }: { readonly shot: Shot; readonly picture: Picture }) {
  const { found } = shot;

  const move = (id: string, [x, y]: Spot) => {
    const [side, name] = id.split(" ") as [Side, PointName];
    const moved = { ...found[side], [name]: flatPoint<"px">(x, y) };
    show(withBasis(kept.value, { ...shot, found: { ...found, [side]: moved } }));
  };

  return (
    <Stage
      label={text.value.stages.eyes}
      box={{ x: 0, y: 0, width: picture.width, height: picture.height }}
      picture={picture}
      handles={SIDES.flatMap((side) =>
        POINTS.flatMap((name): readonly Handle[] => {
          const point = found[side][name];
          if (point === undefined) return [];
          const label = `${words.value.terms.sides[side]}, ${text.value.handles[name]}`;
          return [{ id: `${side} ${name}`, label, at: AS_IT_IS(point), look: "border" }];
        }),
      )}
      step={picture.width / 500}
      onMove={move}
      onDrop={keep}
    >
      {() => <FaceSketch face={found} place={AS_IT_IS} />}
    </Stage>
  );
}
