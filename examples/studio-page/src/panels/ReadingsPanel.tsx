import type { Side } from "brow-geometry";
import { withBasis } from "../appointment/appointment.js";
import type { RulerFace } from "../appointment/basis.js";
import { change, kept } from "../appointment/history.js";
import {
  type FaceReadings,
  isReadable,
  type Readings,
  type SideReadings,
} from "../appointment/readings.js";
import { Options } from "../controls/Options.js";
import { BareTick } from "./BareTick.js";
import { Stepper } from "../controls/Stepper.js";
import { finishReadings } from "../actions/enter.js";
import { entering, said } from "../page-state.js";
import { text, words } from "../words/language.js";

/** What a ruler reads, by half millimetres: a map without any photo. */
export function ReadingsPanel({ basis }: { readonly basis: RulerFace }) {
  const { readings, bare } = basis;
  const side: Side = entering.value === "left" ? "left" : "right";
  const keepReadings = (next: Readings) => {
    if (isReadable(next)) change((now) => withBasis(now, { ...basis, readings: next }));
    else said.value = text.value.unreadable;
  };
  return (
    <>
      <p>{text.value.layRuler}</p>
      <Options
        title={text.value.brow}
        options={{ right: text.value.touching.right, left: text.value.touching.left }}
        chosen={side}
        onChoose={(to) => {
          entering.value = to;
        }}
      />
      {kept.value.visit === undefined && <BareTick basis={basis} side={side} />}
      {bare[side] && <p>{text.value.bareSaid}</p>}
      {(bare[side] ? [] : (Object.keys(readings[side]) as (keyof SideReadings)[])).map((name) => (
        <Stepper
          key={name}
          name={capital(words.value.terms.measures[name])}
          value={readings[side][name]}
          least={name.endsWith("Thickness") ? 1 : 0}
          most={80}
          onStep={(value) =>
            keepReadings({ ...readings, [side]: { ...readings[side], [name]: value } })
          }
        />
      ))}
      {(Object.keys(readings.face) as (keyof FaceReadings)[]).map((name) => (
        <Stepper
          key={name}
          name={text.value.apart[name]}
          value={readings.face[name]}
          least={10}
          most={130}
          onStep={(value) =>
            keepReadings({ ...readings, face: { ...readings.face, [name]: value } })
          }
        />
      ))}
      <button type="button" class="main" onClick={finishReadings}>
        {text.value.showMap}
      </button>
    </>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
