import type { ViteUserConfig } from "vitest/config";
import unpacked from "../../vitest.config.js";

const config: ViteUserConfig = {
  ...unpacked,
  test: {
    ...unpacked.test,
    include: ["tests/packed/*.test.ts"],
    exclude: [],
    outputFile: { json: "coverage/packed-tests.json" },
    typecheck: { enabled: true, include: ["tests/**/*.test-d.ts"] },
  },
};

export default config;
