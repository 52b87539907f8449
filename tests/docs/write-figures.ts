/** Draws the figures of the guides anew: look at what has changed before you keep it. */
import { mkdirSync, writeFileSync } from "node:fs";
import { figures } from "./figures.js";

mkdirSync("docs/figures", { recursive: true });
for (const [name, draw] of figures) writeFileSync(`docs/figures/${name}`, draw());
