/** One drawing in a figure, an SVG of its own, with what stands above it. */
export interface Panel {
  readonly caption: string;
  readonly drawing: string;
}

const PANEL_WIDTH = 480;
const CAPTION_HEIGHT = 26;
const GAP = 16;
/** How a drawing begins; pages to print have a size on paper. */
const OWN_SIZE = /^<svg xmlns="\S+"(?: width="\S+" height="\S+")?/;

/** Drawings side by side in rows, every one as wide as the others, with captions above. */
export function figure(title: string, columns: number, panels: readonly Panel[]): string {
  const height = Math.max(...panels.map(({ drawing }) => heightOf(drawing)));
  const placed = panels.map(({ caption, drawing }, index) => {
    const x = GAP + (index % columns) * (PANEL_WIDTH + GAP);
    const y = GAP + Math.floor(index / columns) * (CAPTION_HEIGHT + height + GAP);
    const size = `x="${x}" y="${y + CAPTION_HEIGHT}" width="${PANEL_WIDTH}" height="${height.toFixed(0)}"`;
    return [
      `<text x="${x}" y="${y + 16}" font-size="15" font-weight="bold">${caption}</text>`,
      drawing.replace(OWN_SIZE, `<svg ${size}`),
    ].join("\n");
  });
  const rows = Math.ceil(panels.length / columns);
  const size = [
    GAP + columns * (PANEL_WIDTH + GAP),
    GAP + rows * (CAPTION_HEIGHT + height + GAP),
  ].map((side) => side.toFixed(0));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size.join(" ")}" role="img" font-family="Helvetica, Arial, sans-serif">`,
    `<title>${title}</title>`,
    `<rect width="100%" height="100%" fill="#ffffff"/>`,
    ...placed,
    "</svg>\n",
  ].join("\n");
}

function heightOf(drawing: string): number {
  const [, width, height] = /viewBox="\S+ \S+ (\S+) (\S+)"/.exec(drawing) ?? [];
  return (PANEL_WIDTH * Number(height)) / Number(width);
}
