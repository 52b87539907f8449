import { computed } from "@preact/signals";
import { drawResult } from "brow-geometry/drawing";
import { basisAtHand } from "../appointment/appointment.js";
import type { Basis } from "../appointment/basis.js";
import { kept, shown } from "../appointment/history.js";
import { useTheme } from "../look/use-theme.js";
import { entering, tab } from "../page-state.js";
import { atRest, type Mapped, mapped } from "../planning/map.js";
import { capturesOf, resultsOf } from "../planning/results.js";
import { EyesStage } from "./EyesStage.js";
import { FacesStage } from "./FacesStage.js";
import { GaugeStage } from "./GaugeStage.js";
import { PlanStage } from "./PlanStage.js";
import { ReadingsStage } from "./ReadingsStage.js";
import { TraceStage } from "./TraceStage.js";
import { useRoom } from "./use-room.js";
import { text, words } from "../words/language.js";

/** The picture of what is done on this tab. */
export function StageArea() {
  // On every other place it is the map that is seen, even while a visit is entered. What moves there moves by itself.
  const basis = tab.value === "face" ? basisAtHand(shown.value) : kept.value.map;
  if (tab.value === "face" && basis !== undefined && basis.kind !== "kept") {
    return <FaceStage basis={basis} />;
  }
  const rest = atRest.value;
  if (!hasMap.value || rest === undefined) {
    return basis === undefined ? null : <FaceStage basis={basis} />;
  }
  if (tab.value === "keep" && resultsOf(rest.plan, kept.value.visits)?.ok === true) {
    return <ResultPicture map={rest} />;
  }
  return <PlanStage atRest={rest} />;
}

const hasMap = computed(() => mapped.value !== undefined);

function FaceStage({ basis }: { readonly basis: Basis }) {
  if (basis.kind === "kept") return null;
  if (basis.kind === "ruler") return <ReadingsStage basis={basis} />;
  const { picture } = basis;
  const at = entering.value;
  if (at === "faces" && picture) return <FacesStage shot={basis} picture={picture} />;
  if (at === "ruler" && picture) return <GaugeStage shot={basis} picture={picture} />;
  if (at === "eyes" && picture) return <EyesStage shot={basis} picture={picture} />;
  return <TraceStage shot={basis} side={at === "left" ? "left" : "right"} />;
}

/** The map with what came of it, as the library draws both. */
function ResultPicture({ map }: { readonly map: Mapped }) {
  const theme = useTheme();
  const { width } = useRoom();
  const svg = drawResult(map.plan, capturesOf(kept.value.visits), {
    theme,
    words: words.value,
    screen: { width },
  });
  return (
    <div
      class="result"
      role="region"
      aria-label={text.value.stages.result}
      // It scrolls where the screen is small, by keys too.
      tabIndex={0}
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  );
}
