import { basisAtHand, withBasis, withChoices } from "../appointment/appointment.js";
import type { Shot } from "../appointment/basis.js";
import { change, kept } from "../appointment/history.js";
import { FileButton } from "../controls/FileButton.js";
import { Options } from "../controls/Options.js";
import { Tick } from "../controls/Tick.js";
import { changeToRuler, finishBrow } from "../actions/enter.js";
import { isByHand, openPhoto } from "../actions/open.js";
import { entering } from "../page-state.js";
import { findings } from "../planning/map.js";
import { firstMark } from "../stage/first-mark.js";
import { ReadingsPanel } from "./ReadingsPanel.js";
import { Verdict } from "./Verdict.js";

/** The face that is entered: a photo with its borders and scale, or readings. */
export function FacePanel() {
  const basis = basisAtHand(kept.value);
  switch (basis?.kind) {
    case "photo":
      return <ShotPanel shot={basis} />;
    case "ruler":
      return <ReadingsPanel basis={basis} />;
    case "kept":
      return <p>This map comes from a record. Its face stays as it was agreed.</p>;
    case undefined:
      return null;
  }
}

function ShotPanel({ shot }: { readonly shot: Shot }) {
  const { traced, picture } = shot;
  const at = entering.value;
  const { declared, visit } = kept.value;
  return (
    <>
      {visit === undefined && findings.value && <Verdict findings={findings.value} />}
      <Options
        title="Touch"
        options={{
          ...(isByHand(shot) && { eyes: "Eyes" }),
          right: `Right brow${traced.right ? " ✓" : ""}`,
          left: `Left brow${traced.left ? " ✓" : ""}`,
          ...(picture && { ruler: "Ruler" }),
        }}
        chosen={at}
        onChoose={(to) => {
          entering.value = to;
        }}
      />
      {at === "ruler" && <GaugeControls shot={shot} />}
      {at === "eyes" && <p>Pull each dot onto its eye corner or nose wing.</p>}
      {(at === "right" || at === "left") && (
        <>
          <p>
            The thin lines are a guess. Pull each point onto the edge of the hair; the loupe shows
            what is beneath your finger.
          </p>
          <button type="button" class="main" onClick={finishBrow}>
            {traced[at] ? `The ${at} brow fits the hair ✓` : `The ${at} brow fits the hair`}
          </button>
        </>
      )}
      <fieldset>
        <legend>Client</legend>
        {(["upright", "relaxed"] as const).map((fact) => (
          <Tick
            key={fact}
            isOn={declared[fact] === true}
            onTick={(isOn) =>
              change((now) => withChoices(now, { declared: { ...declared, [fact]: isOn } }))
            }
          >
            {fact === "upright" ? "Sits upright" : "Face relaxed"}
          </Tick>
        ))}
      </fieldset>
      <div class="row">
        <FileButton name="Another photo" accept="image/*" onFile={openPhoto} />
        <button type="button" onClick={changeToRuler}>
          Ruler only
        </button>
      </div>
    </>
  );
}

const LENGTHS = { "10": "10 mm", "20": "20 mm", "30": "30 mm", "50": "50 mm", "100": "100 mm" };

function GaugeControls({ shot }: { readonly shot: Shot }) {
  const { gauge } = shot;
  if (gauge.kind === "irises") {
    return (
      <p>
        {firstMark.value === undefined
          ? isByHand(shot)
            ? "Tap two marks of a ruler held at brow height: millimetres come from them."
            : "Millimetres come from the irises, good to a tenth. Better: tap two marks of a ruler held at brow height."
          : "Now tap the second mark."}
      </p>
    );
  }
  return (
    <>
      <Options
        title="Between both marks"
        options={LENGTHS}
        chosen={String(gauge.length) as keyof typeof LENGTHS}
        onChoose={(length) =>
          change((now) => withBasis(now, { ...shot, gauge: { ...gauge, length: Number(length) } }))
        }
      />
      {!isByHand(shot) && (
        <button
          type="button"
          onClick={() => change((now) => withBasis(now, { ...shot, gauge: { kind: "irises" } }))}
        >
          Use the irises instead
        </button>
      )}
    </>
  );
}
