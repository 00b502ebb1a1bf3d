import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";

export const ROOT = resolve(import.meta.dirname, "../..");

export interface Import {
  file: string;
  target: string;
  typeOnly: boolean;
}

function files(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !name.endsWith(".d.ts"))
    .map((name) => join(folder, name))
    .sort();
}

/** Every source file, by its path from the top. */
export const FILES = [...files("sim"), ...files("viz")];

const KNOWN = new Set(FILES);

/** Types included, and modules loaded later (`await import(...)`). */
function importsOf(file: string): Import[] {
  const text = readFileSync(join(ROOT, file), "utf8");
  const found = text.matchAll(
    /(?:^(?:import|export)( type)?[^"';]*?from |\bimport\(|^import |new URL\()"(\.[^"?]+)(?:\?[^"]*)?"/gm,
  );
  return [...found]
    .map((match) => ({
      file,
      target: relative(ROOT, resolve(ROOT, dirname(file), match[2]!)),
      typeOnly: match[1] !== undefined,
    }))
    .filter(({ target }) => KNOWN.has(target));
}

/** What each source file imports. */
export const IMPORTS = new Map(FILES.map((file) => [file, importsOf(file)]));

/** "asked/plan" of a file in a room of a wing, "cli" of one in a wing without rooms, "" of a door at the top. */
export function roomOf(path: string): string {
  const [top, wing, room, file] = path.split("/");
  if (room === undefined) return "";
  return top === "sim" && wing !== "cli" && file !== undefined ? `${wing}/${room}` : wing!;
}
