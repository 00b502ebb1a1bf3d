import { defineConfig } from "vitest/config";
import { takeBuilt } from "./tests/support/builtProgram.ts";
import { SlowFirst } from "./tests/support/slowFirst.ts";

/** Those that turn the process's own folder or error output about, and need one of their own for it. */
const APART = ["tests/hostile/**/*.test.ts"];

export default defineConfig({
  plugins: [takeBuilt()],
  test: {
    globalSetup: ["tests/support/builtProgram.ts"],
    testTimeout: 60_000,
    maxWorkers: 2,
    sequence: { sequencer: SlowFirst },
    server: { deps: { external: [/\/\.built\//] } },
    projects: [
      {
        extends: true,
        // Each worker loads the engine and its libraries once, not once a file: half of the time went into that.
        test: { name: "shared", include: ["tests/**/*.test.ts"], exclude: APART, isolate: false },
      },
      { extends: true, test: { name: "apart", include: APART, isolate: true } },
    ],
  },
});
