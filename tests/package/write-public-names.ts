import { readFileSync, writeFileSync } from "node:fs";
import { format, resolveConfig } from "prettier";
import { exportedNames } from "./exported-symbols.js";

// Writes down what the entry points export now: `npm run names`, then read the change.

const file = "tests/package/public-names.ts";
const [head = ""] = readFileSync(file, "utf8").split(" = {");
const text = `${head} = ${JSON.stringify(exportedNames())};`;
writeFileSync(file, await format(text, { ...(await resolveConfig(file)), filepath: file }));
