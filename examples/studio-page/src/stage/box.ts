/** A part of what is drawn, in the coordinates of the stage: pixels of the photo, or millimetres with y down. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A place on the stage. */
export type Spot = readonly [x: number, y: number];

export interface Margins {
  readonly top: number;
  readonly side: number;
  readonly bottom: number;
}

export function boxAround(spots: readonly Spot[], margins: Margins): Box {
  const across = spots.map(([x]) => x);
  const down = spots.map(([, y]) => y);
  const [left, right] = [Math.min(...across) - margins.side, Math.max(...across) + margins.side];
  const [top, bottom] = [Math.min(...down) - margins.top, Math.max(...down) + margins.bottom];
  return { x: left, y: top, width: right - left, height: bottom - top };
}

export function viewBox({ x, y, width, height }: Box): string {
  return [x, y, width, height].map((value) => value.toFixed(2)).join(" ");
}

/** The box that a drawing of the library shows. */
export function boxOf(svg: string): Box | undefined {
  const [x, y, width, height] = /viewBox="([^"]+)"/.exec(svg)?.[1]?.split(" ").map(Number) ?? [];
  if (x === undefined || y === undefined || width === undefined || height === undefined) {
    return undefined;
  }
  return { x, y, width, height };
}
