import { accessSync, constants, lstatSync, readdirSync, realpathSync, type Stats, statSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { cwd } from "node:process";

/** What a run folder holds; with anything else in it, a folder is not ours to replace. */
const OURS = new Set([
  ...[
    "plan.json",
    "study.json",
    "results.json",
    "summary.csv",
    "values.csv",
    "values.parquet",
    "traces.csv",
    "stops.csv",
    ...["week.csv", "lots.csv", "orders.csv", "weeks.csv", "week.ics"],
  ],
  ...[
    "data-dictionary.json",
    "data-dictionary.csv",
    "report.html",
    "report.pdf",
    "tables.xlsx",
    "charts",
    "fragment.json",
  ],
  ...["asked.json", "improvement.json", "line-up.json", "season.json", "doubt.json"],
  ...["demand.json", "dossier.json", "dossier.html", "dossier.pdf", "layout.svg", "layout.pdf", "plans"],
  ...["layout.json", "equipment.csv", "connections.csv"],
]);

/** Annexes of a dossier. */
const ANNEX = /^annex-[a-z]+\.(html|pdf)$/;

/**
 * Why this folder cannot take a run, in words with the remedy; null when it can. A folder that is absent or empty can;
 * one with an earlier run in it can when `overwrite` is set; one with anything else in it never can, so that a slip of
 * the hand does not delete someone's work.
 */
export function runFolderProblem(folder: string, overwrite: boolean): string | null {
  if (folder.trim() === "") return "the name of the folder is empty; name one.";
  if (folder.includes("\0")) return "a folder's name cannot hold the character NUL; name another folder.";
  const entries = entriesOf(folder);
  const above = aboveProblem(folder);
  if (above !== null) return above;
  if (entries === null || (entries.length === 0 && !isHere(folder))) return null;
  if (entries === "a file") return `${folder}: this is a file; name a folder, or one that does not exist yet.`;
  if (isHere(folder)) return `${folder}: this is the folder you are in; name one below it.`;
  const others = foreignIn(folder, entries);
  if (others.length > 0) {
    const named = others.slice(0, 3).join(", ") + (others.length > 3 ? ", ..." : "");
    return `${folder}: holds files that are not of a run (${named}); name another folder.`;
  }
  return overwrite ? null : `${folder}: already holds a run; name another folder, or add --overwrite to replace it.`;
}

/** What is wrong with the nearest folder above that is there, in which something would have to be made. */
function aboveProblem(folder: string): string | null {
  let [above, found] = [resolve(folder), statsOf(resolve(folder))];
  do {
    // No folder could take the name of such a link, which would come out only after the run.
    if (found === undefined && isLink(above))
      return `${folder}: ${above} is a link that leads nowhere; take it away, or name another folder.`;
    above = dirname(above);
    found = statsOf(above);
  } while (found === undefined && above !== dirname(above));
  if (found?.isDirectory() !== true) return `${folder}: ${above} is a file, not a folder; name another folder.`;
  try {
    accessSync(above, constants.W_OK);
    return null;
  } catch {
    return `${folder}: you may not write in ${above}; name another folder.`;
  }
}

function isLink(path: string): boolean {
  try {
    return lstatSync(path).isSymbolicLink();
  } catch {
    return false;
  }
}

/** Undefined where nothing is; looked at once, because another program may take it away between two looks. */
function statsOf(path: string): Stats | undefined {
  try {
    return statSync(path);
  } catch {
    return undefined;
  }
}

function foreignIn(folder: string, entries: readonly string[]): string[] {
  const inside = (name: string) => (entries.includes(name) ? readdirSync(join(folder, name)) : []);
  const [charts, plans] = [inside("charts"), inside("plans")];
  return [
    ...entries.filter((name) => !OURS.has(name) && !ANNEX.test(name)),
    ...plans.filter((name) => !name.endsWith(".json")).map((name) => `plans/${name}`),
    ...charts.filter((name) => !isChart(name, charts)).map((name) => `charts/${name}`),
  ].sort();
}

/** A PNG is ours when it lies beside the drawing that it was made from. */
function isChart(name: string, charts: readonly string[]): boolean {
  return name.endsWith(".svg") || (name.endsWith(".png") && charts.includes(name.replace(/png$/, "svg")));
}

function isHere(folder: string): boolean {
  return realpathSync(folder) === realpathSync(cwd());
}

function entriesOf(folder: string): string[] | "a file" | null {
  const found = statsOf(folder);
  if (found === undefined) return null;
  return found.isDirectory() ? readdirSync(folder) : "a file";
}
