import type { Side } from "brow-geometry";
import { ENGLISH } from "brow-geometry/words";
import { withBasis } from "../appointment/appointment.js";
import type { RulerFace } from "../appointment/basis.js";
import { change } from "../appointment/history.js";
import {
  type FaceReadings,
  isReadable,
  type Readings,
  type SideReadings,
} from "../appointment/readings.js";
import { Options } from "../controls/Options.js";
import { Stepper } from "../controls/Stepper.js";
import { finishReadings } from "../actions/enter.js";
import { entering, said } from "../page-state.js";

const BETWEEN: Readonly<Record<keyof FaceReadings, string>> = {
  innerCorners: "Inner eye corners apart",
  outerCorners: "Outer eye corners apart",
  noseWings: "Nose wings apart",
};

/** What a ruler reads, by half millimetres: a map without any photo. */
export function ReadingsPanel({ basis }: { readonly basis: RulerFace }) {
  const { readings } = basis;
  const side: Side = entering.value === "left" ? "left" : "right";
  const keepReadings = (next: Readings) => {
    if (isReadable(next)) change((now) => withBasis(now, { ...basis, readings: next }));
    else said.value = "No brow can have its dots like that.";
  };
  return (
    <>
      <p>Lay a ruler on the skin, the client upright. Step or drag each dot to what you read.</p>
      <Options
        title="Brow"
        options={{ right: "Right brow", left: "Left brow" }}
        chosen={side}
        onChoose={(to) => {
          entering.value = to;
        }}
      />
      {(Object.keys(readings[side]) as (keyof SideReadings)[]).map((name) => (
        <Stepper
          key={name}
          name={capital(ENGLISH.terms.measures[name])}
          value={readings[side][name]}
          least={name.endsWith("Thickness") ? 1 : 0}
          most={80}
          onStep={(value) =>
            keepReadings({ ...readings, [side]: { ...readings[side], [name]: value } })
          }
        />
      ))}
      {(Object.keys(BETWEEN) as (keyof FaceReadings)[]).map((name) => (
        <Stepper
          key={name}
          name={BETWEEN[name]}
          value={readings.face[name]}
          least={10}
          most={130}
          onStep={(value) =>
            keepReadings({ ...readings, face: { ...readings.face, [name]: value } })
          }
        />
      ))}
      <button type="button" class="main" onClick={finishReadings}>
        Show the map
      </button>
    </>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
