import { basisAtHand } from "./appointment/appointment.js";
import { kept } from "./appointment/history.js";
import { FacePanel } from "./panels/FacePanel.js";
import { CheckPanel } from "./panels/CheckPanel.js";
import { KeepPanel } from "./panels/KeepPanel.js";
import { MapPanel } from "./panels/MapPanel.js";
import { NoMapPanel } from "./panels/NoMapPanel.js";
import { ShapePanel } from "./panels/ShapePanel.js";
import { StartScreen } from "./panels/StartScreen.js";
import { type Tab, tab } from "./page-state.js";
import { atRest, type Mapped } from "./planning/map.js";
import { Header } from "./Header.js";
import { Messages } from "./Messages.js";
import { StageArea } from "./stage/StageArea.js";
import { TabBar } from "./TabBar.js";
import { text } from "./words/language.js";

/** The whole page: the picture, what belongs to the tab beneath or beside it. */
export function Page() {
  const begun = basisAtHand(kept.value) !== undefined;
  return (
    <div class="screen">
      {begun ? (
        <>
          <Header />
          <main class="work">
            <StageArea />
            <section key={tab.value} class="panel" aria-label={text.value.panel}>
              <Messages />
              <Panel at={tab.value} map={atRest.value} />
            </section>
          </main>
          <TabBar />
          <p id="keys" hidden>
            {text.value.keys}
          </p>
        </>
      ) : (
        <StartScreen />
      )}
    </div>
  );
}

function Panel({ at, map }: { readonly at: Tab; readonly map: Mapped | undefined }) {
  if (at === "face") return <FacePanel />;
  if (map === undefined) return <NoMapPanel />;
  switch (at) {
    case "map":
      return <MapPanel map={map} />;
    case "shape":
      return <ShapePanel map={map} />;
    case "check":
      return <CheckPanel map={map} />;
    case "keep":
      return <KeepPanel map={map} />;
  }
}
