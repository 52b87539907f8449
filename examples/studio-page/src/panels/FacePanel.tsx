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
import { BareTick } from "./BareTick.js";
import { ReadingsPanel } from "./ReadingsPanel.js";
import { Verdict } from "./Verdict.js";
import { text } from "../words/language.js";

/** The face that is entered: a photo with its borders and scale, or readings. */
export function FacePanel() {
  const basis = basisAtHand(kept.value);
  switch (basis?.kind) {
    case "photo":
      return <ShotPanel shot={basis} />;
    case "ruler":
      return <ReadingsPanel basis={basis} />;
    case "kept":
      return <p>{text.value.faceKept}</p>;
    case undefined:
      return null;
  }
}

function ShotPanel({ shot }: { readonly shot: Shot }) {
  const { traced, bare, picture } = shot;
  const at = entering.value;
  const { declared, visit } = kept.value;
  const { touching } = text.value;
  return (
    <>
      {at === "faces" && <p>{text.value.severalFaces}</p>}
      {visit === undefined && at !== "faces" && findings.value && (
        <Verdict findings={findings.value} />
      )}
      <Options
        title={text.value.touch}
        options={{
          ...(shot.faces && { faces: touching.faces }),
          ...(isByHand(shot) && { eyes: touching.eyes }),
          right: `${touching.right}${traced.right ? " ✓" : ""}`,
          left: `${touching.left}${traced.left ? " ✓" : ""}`,
          ...(picture && { ruler: touching.ruler }),
        }}
        chosen={at}
        onChoose={(to) => {
          entering.value = to;
        }}
      />
      {at === "ruler" && <GaugeControls shot={shot} />}
      {at === "eyes" && <p>{text.value.pullEyes}</p>}
      {(at === "right" || at === "left") && (
        <>
          <p>{bare[at] ? text.value.bareSaid : text.value.pullHair}</p>
          <button type="button" class="main" onClick={finishBrow}>
            {bare[at]
              ? text.value.goOn
              : traced[at]
                ? `${text.value.fits[at]} ✓`
                : text.value.fits[at]}
          </button>
          {visit === undefined && <BareTick basis={shot} side={at} />}
        </>
      )}
      <fieldset>
        <legend>{text.value.client}</legend>
        {(["upright", "relaxed"] as const).map((fact) => (
          <Tick
            key={fact}
            isOn={declared[fact] === true}
            onTick={(isOn) =>
              change((now) => withChoices(now, { declared: { ...declared, [fact]: isOn } }))
            }
          >
            {text.value.declared[fact]}
          </Tick>
        ))}
      </fieldset>
      <div class="row">
        <FileButton name={text.value.anotherPhoto} accept="image/*" onFile={openPhoto} />
        <button type="button" onClick={changeToRuler}>
          {text.value.rulerOnly}
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
            ? text.value.tapMarksByHand
            : text.value.tapMarks
          : text.value.tapSecond}
      </p>
    );
  }
  return (
    <>
      <Options
        title={text.value.betweenMarks}
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
          {text.value.useIrises}
        </button>
      )}
    </>
  );
}
