/** About how wide pictures are shown: all of the screen, or what a desk leaves beside the panel. */
export function pictureWidth(): number {
  return Math.max(320, innerWidth < 900 ? innerWidth : innerWidth - 440);
}
