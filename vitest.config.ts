import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    globalSetup: ["tests/support/builtProgram.ts"],
    testTimeout: 60_000,
    maxWorkers: 2,
    // Each worker loads the engine and its libraries once, not once a file: half of the time went into that.
    isolate: false,
  },
});
