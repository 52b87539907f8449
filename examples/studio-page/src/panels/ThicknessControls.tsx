import { type Choices, mm } from "brow-geometry";
import { Options } from "../controls/Options.js";
import { Stepper } from "../controls/Stepper.js";
import { kept } from "../appointment/history.js";
import type { Mapped } from "../planning/map.js";
import { text } from "../words/language.js";

const STATIONS = ["start", "body", "arch"] as const;
type Station = (typeof STATIONS)[number];

interface ThicknessProps {
  readonly map: Mapped;
  /** Takes all choices, so that one can be left out again. */
  readonly onChoose: (choices: Choices) => void;
}

/** How thick the brow is: as it grows, or as the artist says. */
export function ThicknessControls({ map, onChoose }: ThicknessProps) {
  const { thickness, ...others } = kept.value.choices;
  const planned = (station: Station) => map.plan.measures.right[`${station}Thickness`]?.value ?? 7;
  const own = (station: Station) => thickness?.[station] ?? halves(planned(station));
  return (
    <>
      <Options
        title={text.value.thickness}
        options={text.value.thicknessNames}
        chosen={thickness === undefined ? "grows" : "own"}
        onChoose={(to) =>
          to === "own"
            ? onChoose({
                ...others,
                thickness: {
                  start: mm(own("start")),
                  body: mm(own("body")),
                  arch: mm(own("arch")),
                },
              })
            : onChoose(others)
        }
      />
      {thickness !== undefined &&
        STATIONS.map((station) => (
          <Stepper
            key={station}
            name={text.value.stations[station]}
            value={own(station)}
            least={2}
            most={15}
            onStep={(value) =>
              onChoose({ ...others, thickness: { ...thickness, [station]: mm(value) } })
            }
          />
        ))}
    </>
  );
}

function halves(value: number): number {
  return Math.round(2 * value) / 2;
}
