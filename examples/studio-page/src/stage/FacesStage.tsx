import type { Face } from "brow-geometry";
import { chooseFace } from "../actions/enter.js";
import type { Picture, Shot } from "../appointment/basis.js";
import { text } from "../words/language.js";
import { type Box, boxAround, viewBox } from "./box.js";
import { AS_IT_IS, spotsOf } from "./place.js";
import { PictureImage } from "./PictureImage.js";

interface FacesProps {
  readonly shot: Shot;
  readonly picture: Picture;
}

/** Several faces on a photo, of which a tap chooses the client's. */
export function FacesStage({ shot, picture }: FacesProps) {
  const { width, height } = picture;
  const box = { x: 0, y: 0, width, height };
  return (
    <div class="stage" style={{ "--ratio": width / height }}>
      <PictureImage picture={picture} box={box} />
      <svg class="live" viewBox={viewBox(box)} role="group" aria-label={text.value.stages.faces}>
        {shot.faces?.map((face, index) => (
          <rect
            key={index}
            class={face === shot.found ? "face chosen" : "face"}
            {...boxOfFace(face)}
            tabindex={0}
            role="button"
            aria-label={text.value.handles.face(index + 1)}
            aria-pressed={face === shot.found}
            onClick={() => chooseFace(shot, face)}
            onKeyDown={(event) => {
              if (event.key !== "Enter" && event.key !== " ") return;
              // Space scrolls pages.
              event.preventDefault();
              chooseFace(shot, face);
            }}
          />
        ))}
      </svg>
    </div>
  );
}

/** About a face: as far below its eyes as a chin is, which no landmark of a map marks. */
function boxOfFace(face: Face<"px">): Box {
  const spots = spotsOf(face, AS_IT_IS);
  const { width } = boxAround(spots, { top: 0, side: 0, bottom: 0 });
  return boxAround(spots, { top: 0.35 * width, side: 0.25 * width, bottom: 0.45 * width });
}
