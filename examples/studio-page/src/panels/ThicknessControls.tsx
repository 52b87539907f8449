import { type Choices, mm } from "brow-geometry";
import { Options } from "../controls/Options.js";
import { Stepper } from "../controls/Stepper.js";
import { kept } from "../appointment/history.js";
import type { Mapped } from "../planning/map.js";

const STATIONS = { start: "At the start", body: "At the body", arch: "At the arch" } as const;
type Station = keyof typeof STATIONS;
const STATION_NAMES = Object.keys(STATIONS) as readonly Station[];

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
        title="Thickness"
        options={{ grows: "As it grows", own: "My own" }}
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
        STATION_NAMES.map((station) => (
          <Stepper
            key={station}
            name={STATIONS[station]}
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
