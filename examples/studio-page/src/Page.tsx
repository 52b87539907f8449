import { basisAtHand } from "./appointment/appointment.js";
import { shown } from "./appointment/history.js";
import { FacePanel } from "./panels/FacePanel.js";
import { CheckPanel } from "./panels/CheckPanel.js";
import { KeepPanel } from "./panels/KeepPanel.js";
import { MapPanel } from "./panels/MapPanel.js";
import { NoMapPanel } from "./panels/NoMapPanel.js";
import { ShapePanel } from "./panels/ShapePanel.js";
import { StartScreen } from "./panels/StartScreen.js";
import { type Tab, tab } from "./page-state.js";
import { type Mapped, mapped } from "./planning/map.js";
import { Header } from "./Header.js";
import { Messages } from "./Messages.js";
import { Sheet } from "./Sheet.js";
import { StageArea } from "./stage/StageArea.js";
import { TabBar } from "./TabBar.js";

/** The whole page: the picture, what belongs to the tab beneath or beside it, and the sheet to print. */
export function Page() {
  const begun = basisAtHand(shown.value) !== undefined;
  return (
    <>
      <div class="screen">
        {begun ? (
          <>
            <Header />
            <main class="work">
              <StageArea />
              <section class="panel" aria-label="What to do">
                <Panel at={tab.value} map={mapped.value} />
              </section>
            </main>
            <TabBar />
          </>
        ) : (
          <StartScreen />
        )}
        <Messages />
      </div>
      <Sheet />
    </>
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
