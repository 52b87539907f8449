import { memo } from "preact/compat";
import type { Picture } from "../appointment/basis.js";
import { type Box, viewBox } from "./box.js";

interface PictureProps {
  readonly picture: Picture;
  readonly box: Box;
}

/** The photo, in a layer of its own that a dragged dot leaves alone. */
export const PictureImage = memo(function PictureImage({ picture, box }: PictureProps) {
  const { width, height, href } = picture;
  return (
    <svg class="photo" viewBox={viewBox(box)} aria-hidden="true">
      <image href={href} width={width} height={height} />
    </svg>
  );
});
