import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "vite";

const LICENCE_FILE = /^(licen[cs]e|copying)(\.(md|txt))?$/iu;

/** Notes the modules that a build puts together; the worker is a build of its own. */
export function noteModules(modules: Set<string>): Plugin {
  return {
    name: "note-modules",
    apply: "build",
    generateBundle(_, bundle) {
      for (const file of Object.values(bundle)) {
        if (file.type === "chunk") for (const id of Object.keys(file.modules)) modules.add(id);
      }
    },
  };
}

/**
 * The licence of every package that the modules come from, with its text, in alphabetical order: what has to go along
 * with the page. `modules`: paths as the bundler gives them. Throws for a package that tells no licence.
 */
export function licencesOf(modules: Iterable<string>): string {
  const folders = new Set([...modules].flatMap((id) => packageFolder(id.split("?")[0]!) ?? []));
  const parts = [...folders].map((folder) => {
    const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
    const file = readdirSync(folder).find((each) => LICENCE_FILE.test(each));
    if (typeof license !== "string" && file === undefined) throw new Error(`${name}: no licence is told`);
    const text = file === undefined ? "" : readFileSync(join(folder, file), "utf8").trim();
    return { name: String(name), text: `${name} ${version}: ${license ?? "see below"}\n\n${text}` };
  });
  parts.sort((a, b) => (a.name < b.name ? -1 : 1));
  return parts.map(({ text }) => text).join("\n\n----\n\n");
}

/** The folder of the package that a module belongs to; null for the program's own modules. */
function packageFolder(path: string): string | null {
  return /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+/u.exec(path)?.[0] ?? null;
}
