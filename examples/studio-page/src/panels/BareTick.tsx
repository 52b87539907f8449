import type { Side } from "brow-geometry";
import { withBasis } from "../appointment/appointment.js";
import type { RulerFace, Shot } from "../appointment/basis.js";
import { change } from "../appointment/history.js";
import { Tick } from "../controls/Tick.js";
import { text } from "../words/language.js";

interface BareProps {
  readonly basis: Shot | RulerFace;
  readonly side: Side;
}

/** That a brow has no hair to plan from. */
export function BareTick({ basis, side }: BareProps) {
  const { bare } = basis;
  return (
    <Tick
      isOn={bare[side]}
      onTick={(isOn) =>
        change((now) => withBasis(now, { ...basis, bare: { ...bare, [side]: isOn } }))
      }
    >
      {text.value.bare[side]}
    </Tick>
  );
}
