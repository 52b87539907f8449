import { randomInt } from "node:crypto";
import { readFileSync } from "node:fs";
import { relative } from "node:path";
import { parseArgs } from "node:util";
import { createVitest, type TestModule } from "vitest/node";

const { values: asked, positionals: filters } = parseArgs({
  options: { minutes: { type: "string", default: "2" }, seed: { type: "string" } },
  allowPositionals: true,
});
const replayed = asked.seed === undefined ? undefined : numberFrom("seed", asked.seed);

const vitest = await createVitest("test", {
  watch: false,
  typecheck: { enabled: false },
  reporters: [{}],
});
const files = (await vitest.globTestSpecifications(filters)).filter(({ moduleId }) =>
  readFileSync(moduleId, "utf8").includes("fast-check"),
);
if (files.length === 0) throw new Error(`no property in ${filters.join(", ")}`);

const limit = AbortSignal.timeout(60_000 * numberFrom("minutes", asked.minutes));
limit.addEventListener("abort", () => {
  if (replayed === undefined) void vitest.cancelCurrentRun("keyboard-input");
});

const failures: string[] = [];
let passed = 0;
do {
  const seed = replayed ?? randomInt(2 ** 31);
  // The workers of a run start with what the environment then holds.
  process.env.PROPERTY_SEED = String(seed);
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(files);
  for (const module of testModules) failures.push(...failuresOf(module, seed));
  failures.push(...unhandledErrors.map(String));
  if (failures.length === 0 && !limit.aborted) passed += 1;
} while (replayed === undefined && failures.length === 0 && !limit.aborted);
await vitest.close();
console.log([...failures, `Seeds passed in ${files.length} files: ${passed}`].join("\n\n"));
process.exit(failures.length === 0 ? 0 : 1);

/** What failed in a file, each with the command that fails again. */
function failuresOf(module: TestModule, seed: number): readonly string[] {
  const file = relative(process.cwd(), module.moduleId);
  const said = (name: string, errors: readonly { readonly message: string }[]): string =>
    [
      `${file} > ${name}`,
      ...errors.map(({ message }) => message),
      `Replay: npm run test:search -- --seed ${seed} ${file}`,
    ].join("\n");
  const tests = [...module.children.allTests("failed")].map((test) =>
    said(test.fullName, test.result().errors ?? []),
  );
  return module.errors().length === 0 ? tests : [said("loading", module.errors()), ...tests];
}

function numberFrom(option: string, text: string): number {
  const value = Number(text);
  if (Number.isFinite(value)) return value;
  throw new Error(`--${option} is ${text}; needs a number`);
}
