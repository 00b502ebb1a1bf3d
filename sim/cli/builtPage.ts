import { existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";

/** What the page is made of, below the project's folder. */
const SOURCES = ["viz", "sim", "experiments/lessons", "experiments/plans", "package.json"];

/**
 * Path of the built page. An installed package has it; a checkout builds it when it is missing or older than its
 * sources, and `say` is told so. The new page takes the old one's place in one step, so nobody meets half of it.
 */
export async function builtPage(
  root: string,
  say: (line: string) => void,
  folder = join(root, "dist", "page"),
): Promise<string> {
  const page = join(folder, "index.html");
  const config = join(root, "viz", "page", "vite.config.ts");
  if (!existsSync(config)) {
    if (existsSync(page)) return page;
    throw new Error(`${page} is not there; is the installation whole?`);
  }
  const isFresh = () => existsSync(page) && statSync(page).mtimeMs > newestSource(root);
  if (isFresh()) return page;
  say("Building the page from its sources: some seconds, once.");
  await build(config, folder, isFresh);
  return page;
}

/** Where another process has finished the same work meanwhile, its page stays: somebody may be reading it. */
async function build(configFile: string, folder: string, isFresh: () => boolean): Promise<void> {
  mkdirSync(dirname(folder), { recursive: true });
  const fresh = mkdtempSync(`${folder}-`);
  try {
    const vite = await import("vite");
    await vite.build({ configFile, logLevel: "error", build: { outDir: fresh, emptyOutDir: true } });
    if (isFresh()) return;
    rmSync(folder, { recursive: true, force: true });
    renameSync(fresh, folder);
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
}

function newestSource(root: string): number {
  const files = SOURCES.flatMap((name) => {
    const path = join(root, name);
    if (!existsSync(path)) return [];
    if (!statSync(path).isDirectory()) return [path];
    return readdirSync(path, { recursive: true, encoding: "utf8" }).map((inside) => join(path, inside));
  });
  return Math.max(0, ...files.map((path) => statSync(path).mtimeMs));
}
