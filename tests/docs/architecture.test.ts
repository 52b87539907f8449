import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import manifest from "../../package.json" with { type: "json" };

const folders = foldersOf("src");
const rooms = folders.flatMap((folder) =>
  foldersOf(`src/${folder}`).map((room) => `${folder}/${room}`),
);

function foldersOf(parent: string): readonly string[] {
  return readdirSync(parent, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
}

function textOf(page: string): string {
  return readFileSync(page, "utf8");
}

describe("pages that describe the library", () => {
  it("name every folder and every room", () => {
    const text = textOf("docs/architecture.md");
    expect(folders.filter((folder) => !text.includes(`| \`src/${folder}\``))).toEqual([]);
    const named = Array.from(text.matchAll(/^\| `([a-z]+\/[a-z]+)` +\|/gm), ([, room]) => room);
    expect(named.filter((room) => !room?.startsWith("src/")).sort()).toEqual([...rooms].sort());
  });

  it("give a reason for every dependency, and for no other", () => {
    const [, section = ""] = textOf("docs/architecture.md").split("## Dependencies");
    const named = Array.from(section.matchAll(/^\| ([\w-]+) +\| `src\//gm), ([, name]) => name);
    expect(named.sort()).toEqual(Object.keys(manifest.dependencies).sort());
  });

  it("list every entry point in the README", () => {
    const folders = Object.keys(manifest.exports)
      .map((path) => path.slice(1))
      .filter((path) => path !== "" && path !== "/package.json");
    expect(folders.filter((path) => !textOf("README.md").includes(`${path}\``))).toEqual([]);
  });

  it("link to files that exist", () => {
    const pages = ["README.md", "DEVELOPERS.md", "CHANGELOG.md"].concat(
      readdirSync("docs")
        .filter((file) => file.endsWith(".md"))
        .map((file) => `docs/${file}`),
    );
    const broken = pages.flatMap((page) =>
      Array.from(
        textOf(page).matchAll(/\]\((?!https?:|#)([^)#]+)(?:#[^)]*)?\)/g),
        ([, link]) => link,
      )
        .filter((link = "") => !exists(new URL(link, `file://${process.cwd()}/${page}`)))
        .map((link) => `${page}: ${link ?? ""}`),
    );
    expect(broken).toEqual([]);
  });
});

function exists(file: URL): boolean {
  try {
    readFileSync(file);
    return true;
  } catch {
    return false;
  }
}
