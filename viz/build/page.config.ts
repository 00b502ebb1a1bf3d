import { readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";
import { noteModules } from "./licences.ts";
import { oneFile } from "./oneFile.ts";

const HERE = dirname(fileURLToPath(import.meta.url));
const ROOT = resolve(HERE, "../..");
const { version } = JSON.parse(readFileSync(resolve(ROOT, "package.json"), "utf8"));
const modules = new Set<string>();

/** The live page as one file that opens from a disk, a mail or any host. */
export default defineConfig({
  root: resolve(ROOT, "viz/page"),
  base: "./",
  define: { __VERSION__: JSON.stringify(version) },
  worker: { format: "iife", plugins: () => [noteModules(modules)] },
  build: {
    outDir: resolve(ROOT, "dist/page"),
    emptyOutDir: true,
    assetsInlineLimit: Number.MAX_SAFE_INTEGER,
    cssCodeSplit: false,
    modulePreload: false,
    chunkSizeWarningLimit: 4000,
    rolldownOptions: { output: { codeSplitting: false } },
  },
  plugins: [noteModules(modules), oneFile(modules)],
});
