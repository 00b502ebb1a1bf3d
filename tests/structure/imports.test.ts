import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { describe, expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");

/** What each room may import from, besides itself. Data flows one way: from text to numbers, from numbers to pictures. */
const SIM: Record<string, string[]> = {
  units: [],
  varying: [],
  random: ["numeric", "varying"],
  numeric: [],
  csv: [],
  chilling: ["numeric"],
  plan: ["units", "varying", "csv", "chilling"],
  study: ["units", "random", "plan"],
  estimate: ["random", "chilling", "plan"],
  size: ["units", "random", "chilling", "plan", "estimate"],
  line: ["random", "chilling", "plan"],
  engine: ["random", "plan", "line"],
  course: ["plan", "line", "engine"],
  observations: ["units", "random", "plan", "line", "engine"],
  statistics: ["units", "random", "numeric", "study", "observations"],
  fit: ["units", "random", "numeric", "csv", "plan", "statistics"],
  calibrate: ["units", "random", "csv", "plan", "line", "engine", "observations", "statistics"],
  results: ["units", "plan", "study", "engine", "observations", "statistics"],
  run: ["units", "random", "plan", "study", "line", "engine", "observations", "statistics", "results"],
  worth: ["units", "plan", "study", "observations", "statistics", "results"],
  improve: ["units", "plan", "study", "line", "estimate", "observations", "statistics", "results", "run", "worth"],
  advice: ["units", "random", "plan", "study", "estimate", "line", "observations", "statistics", "results", "run"],
  cli: [
    "units",
    "random",
    "csv",
    "plan",
    "study",
    "line",
    "engine",
    "observations",
    "statistics",
    "fit",
    "calibrate",
    "size",
    "results",
    "run",
    "worth",
    "improve",
    "advice",
  ],
};
const VIZ: Record<string, string[]> = {
  frame: [],
  marks: ["frame"],
  charts: ["frame", "marks"],
  words: ["frame"],
  views: ["frame", "marks", "charts", "words"],
  tables: ["frame", "marks", "charts"],
  report: ["frame", "marks", "charts", "tables", "views", "words"],
  page: ["frame", "marks", "charts", "views", "words", "report"],
};
/** The one room of viz/ that runs the simulator, in the browser's workers; nothing else may import it. */
const PAGE = "viz/page/";

interface Import {
  file: string;
  target: string;
  typeOnly: boolean;
}

function files(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !name.endsWith(".d.ts"))
    .map((name) => join(folder, name));
}

function importsOf(file: string): Import[] {
  const text = readFileSync(join(ROOT, file), "utf8");
  const found = [...text.matchAll(/^(import|export)( type)?[^"';]*?from "(\.[^"]+)"/gms)];
  const code = found.filter((match) => /\.tsx?$/.test(match[3]!));
  return code.map((match) => ({
    file,
    target: relative(ROOT, resolve(ROOT, dirname(file), match[3]!)),
    typeOnly: match[2] !== undefined,
  }));
}

function roomOf(path: string): string {
  const [top, room] = path.split("/");
  return `${top}/${room}`;
}

function strayImports(top: "sim" | "viz", allowed: Record<string, string[]>): string[] {
  return files(top)
    .flatMap(importsOf)
    .filter(({ file, target }) => file.split("/").length > 2 && target.split("/").length > 2)
    .filter(({ file, target }) => {
      const from = file.split("/")[1]!;
      const [toTop, to] = target.split("/") as [string, string];
      if (roomOf(file) === roomOf(target)) return false;
      return toTop !== top || !(allowed[from] ?? []).includes(to);
    })
    .map(({ file, target }) => `${file} -> ${target}`);
}

describe("imports", () => {
  it("inside sim/ run one way", () => {
    const toPage = (line: string) => /^sim\/cli\/.* -> viz\//.test(line);
    expect(strayImports("sim", SIM).filter((line) => !toPage(line))).toEqual([]);
  });

  it("inside viz/ run one way, and none but the contract's types come from sim/", () => {
    const toSim = (line: string) => line.startsWith(PAGE) && / -> sim\//.test(line);
    expect(strayImports("viz", VIZ).filter((line) => !toSim(line))).toEqual([]);
    const fromSim = files("viz")
      .flatMap(importsOf)
      .filter(({ file, target }) => !file.startsWith(PAGE) && target.startsWith("sim/"));
    expect(fromSim.length).toBeGreaterThan(0);
    expect(fromSim.filter(({ typeOnly }) => !typeOnly)).toEqual([]);
    expect(new Set(fromSim.map(({ file }) => file))).toEqual(new Set(["viz/contract.ts"]));
  });

  it("of the page go to the doors of the simulator's rooms, those that a browser has", () => {
    const fromSim = files("viz/page")
      .flatMap(importsOf)
      .filter(({ target }) => target.startsWith("sim/"));
    expect(fromSim.length).toBeGreaterThan(10);
    expect(
      fromSim.map(({ target }) => target).filter((target) => !/^sim\/(?!cli)\w+\/index\.ts$/.test(target)),
    ).toEqual([]);
  });

  it("of files are never circular", () => {
    const graph = new Map<string, string[]>();
    for (const { file, target, typeOnly } of [...files("sim"), ...files("viz")].flatMap(importsOf)) {
      if (!typeOnly) graph.set(file, [...(graph.get(file) ?? []), target]);
    }
    const done = new Set<string>();
    const visit = (file: string, path: string[]): void => {
      if (path.includes(file)) throw new Error(`circular: ${[...path, file].join(" -> ")}`);
      if (done.has(file)) return;
      for (const next of graph.get(file) ?? []) visit(next, [...path, file]);
      done.add(file);
    };
    for (const file of graph.keys()) visit(file, []);
    expect(done.size).toBeGreaterThan(50);
  });
});
