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
    // What needs the built package, the compiler or a process of its own runs apart: npm run test:package.
    exclude: ["tests/packed/**"],
    setupFiles: ["tests/support/properties.ts"],
    // Nothing here keeps state between files, so that the library is loaded once a worker.
    isolate: false,
    // Packages show what Node shows: a stand-in for each would be asked at every call of gl-matrix.
    deps: { interopDefault: false },
    maxWorkers: "100%",
    silent: "passed-only",
    // How fast a machine is decides no test.
    testTimeout: 0,
    hookTimeout: 0,
    // CI reads the true counts from a file.
    reporters: process.env.CI === undefined ? ["default"] : ["default", "json"],
    outputFile: { json: "coverage/tests.json" },
    coverage: { provider: "v8", include: ["src/**/*.ts"], reporter: ["text", "html"] },
  },
});

export default config;
