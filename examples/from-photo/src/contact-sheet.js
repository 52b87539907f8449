const columns = 5;
/** Side of a picture on the sheet, in pixels. */
export const picture = 360;
const gap = 16;
const lineHeight = 20;
const linesOfText = 6;
/** What fits under a picture, in the widest letters that captions use. */
const lettersOfLine = 50;

/**
 * @typedef {object} SheetCell
 * @property {Buffer} png  A square, as large as it is shown: twenty of full size choke the browser.
 * @property {string} title
 * @property {readonly string[]} lines
 */

/**
 * All maps of a run on one sheet, as SVG.
 * @param {readonly SheetCell[]} cells
 */
export function contactSheet(cells) {
  const cellHeight = picture + lineHeight * (linesOfText + 1);
  const rows = Math.ceil(cells.length / columns);
  const across = Math.min(columns, cells.length);
  const width = gap + across * (picture + gap);
  const height = gap + rows * (cellHeight + gap);
  const drawn = cells.map(({ png, title, lines }, index) => {
    const x = gap + (index % columns) * (picture + gap);
    const y = gap + Math.floor(index / columns) * (cellHeight + gap);
    const text = [title, ...fitted(lines)].map(
      (line, row) =>
        `<text x="${x}" y="${y + picture + lineHeight * (row + 1) - 4}"${
          row === 0 ? ' font-weight="bold"' : ""
        }>${escapeText(line)}</text>`,
    );
    return `<image x="${x}" y="${y}" width="${picture}" height="${picture}" href="data:image/png;base64,${png.toString("base64")}"/>${text.join("")}`;
  });
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="14" fill="#222">
<title>Contact sheet</title>
<rect width="${width}" height="${height}" fill="#fff"/>
${drawn.join("\n")}
</svg>
`;
  return { svg, width, height };
}

/**
 * As many lines as fit under a picture.
 * @param {readonly string[]} lines
 */
function fitted(lines) {
  const all = lines.flatMap(wrapped);
  const shown = all.slice(0, linesOfText);
  return all.length > linesOfText ? [...shown.slice(0, -1), `${shown.at(-1)} …`] : shown;
}

/** @param {string} line */
function wrapped(line) {
  /** @type {string[]} */
  const lines = [];
  for (const word of line.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= lettersOfLine) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else lines.push(word.slice(0, lettersOfLine));
  }
  return lines;
}

/** @param {string} text */
export function escapeText(text) {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
