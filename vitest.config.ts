import { fileURLToPath } from "node:url";
import { defineConfig, type ViteUserConfig } from "vitest/config";

const source: string = fileURLToPath(new URL("src", import.meta.url));

const config: ViteUserConfig = defineConfig({
  resolve: {
    alias: [
      { find: /^brow-geometry$/, replacement: `${source}/index.ts` },
      { find: /^brow-geometry\/(\w+)$/, replacement: `${source}/$1/index.ts` },
    ],
  },
  test: {
    include: ["tests/**/*.test.ts"],
    setupFiles: ["tests/support/properties.ts"],
    // Nothing here keeps state between files, so that the library is loaded once, not once a file.
    isolate: false,
    silent: "passed-only",
    // Tests that compile or install take seconds, and more on a busy machine.
    testTimeout: 30_000,
    // CI reads the true counts from a file.
    reporters: process.env.CI === undefined ? ["default"] : ["default", "json"],
    outputFile: { json: "coverage/tests.json" },
    typecheck: { enabled: true, include: ["tests/**/*.test-d.ts"] },
    coverage: { provider: "v8", include: ["src/**/*.ts"], reporter: ["text", "html"] },
  },
});

export default config;
