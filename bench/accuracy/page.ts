/** A table in Markdown. */
export function table(header: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  return [line(header), line(header.map(() => "---")), ...rows.map(line)].join("\n");
}

/** Puts texts between the markers of a page: `<!-- name -->` and `<!-- /name -->`. */
export function intoPage(page: string, texts: Readonly<Record<string, string>>): string {
  return Object.entries(texts).reduce((whole, [name, text]) => {
    const [open, close] = [`<!-- ${name} -->`, `<!-- /${name} -->`];
    const [from, to] = [whole.indexOf(open), whole.indexOf(close)];
    if (from === -1 || to < from) throw new Error(`the page has no ${open} … ${close}`);
    return `${whole.slice(0, from + open.length)}\n\n${text}\n\n${whole.slice(to)}`;
  }, page);
}
