import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";

const LICENCE_FILE = /^(licen[cs]e|copying)(\.(md|txt))?$/iu;

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
  if (!path.includes("/node_modules/")) return null;
  for (let folder = dirname(path); !folder.endsWith("/node_modules"); folder = dirname(folder)) {
    const manifest = join(folder, "package.json");
    // Packages put small manifests into folders of theirs, without a name.
    if (existsSync(manifest) && JSON.parse(readFileSync(manifest, "utf8")).name !== undefined) return folder;
    if (folder === dirname(folder)) return null;
  }
  return null;
}
