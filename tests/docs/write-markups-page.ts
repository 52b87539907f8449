import { writeFileSync } from "node:fs";
import { markupsPage } from "./markups-page.js";

// Writes docs/markups.md anew: `npm run docs:markups`.
writeFileSync("docs/markups.md", await markupsPage());
