import { dirname, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";
import { licencesOf, noteModules } from "./licences.ts";

const ROOT = resolve(dirname(fileURLToPath(import.meta.url)), "../..");
const modules = new Set<string>();

/** Whoever comes in from outside: the command line, the two libraries, and threads, which are found beside their pool by name. */
const ENTRIES = {
  gambrel: "sim/cli/main.ts",
  library: "sim/index.ts",
  charts: "viz/index.ts",
  studyThread: "sim/days/run/threads/studyThread.ts",
  lastingThread: "sim/days/run/threads/lastingThread.ts",
  queueThread: "sim/days/run/queue/queueThread.ts",
};

/** Have files or threads of their own, or are not there for everybody. */
const BESIDE = ["piscina", "bullmq", "ioredis", "playwright-core", "@sparticuz/chromium", "vite", "open"];

/**
 * The program in a few files of one folder: a thousand modules, libraries included, take longer to be found and read one by
 * one than a day takes to be simulated, and each thread would hold as many files open.
 */
export default defineConfig({
  root: ROOT,
  build: {
    ssr: true,
    target: "node20",
    outDir: resolve(ROOT, "dist/program"),
    emptyOutDir: true,
    minify: false,
    rolldownOptions: {
      input: Object.fromEntries(Object.entries(ENTRIES).map(([name, file]) => [name, resolve(ROOT, file)])),
      output: { entryFileNames: "[name].js", chunkFileNames: "[name]-[hash].js" },
    },
  },
  ssr: { noExternal: true, external: BESIDE },
  plugins: [noteModules(modules), licences()],
});

function licences(): Plugin {
  return {
    name: "licences",
    apply: "build",
    enforce: "post",
    generateBundle() {
      this.emitFile({ type: "asset", fileName: "LICENCES.txt", source: licencesOf(modules) });
    },
  };
}
