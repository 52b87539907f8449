import { writeFileSync } from "node:fs";
import { NAMES_HEAD, namesPage } from "./names-page.js";

// Writes docs/names.md anew: `npm run names`, then read the change.
writeFileSync("docs/names.md", [NAMES_HEAD, ...(await namesPage()).values()].join("\n"));
