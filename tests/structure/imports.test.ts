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
  plan: ["units", "numeric", "varying", "csv", "chilling"],
  study: ["units", "random", "plan", "statistics"],
  estimate: ["random", "chilling", "plan"],
  size: ["units", "random", "chilling", "plan", "estimate"],
  line: ["random", "chilling", "plan"],
  engine: ["random", "plan", "line"],
  course: ["plan", "line", "engine"],
  observations: ["units", "numeric", "random", "plan", "line", "engine", "statistics"],
  statistics: ["random", "numeric"],
  fit: ["units", "random", "numeric", "csv", "plan", "statistics"],
  calibrate: ["units", "random", "csv", "plan", "line", "engine", "observations", "statistics"],
  results: ["units", "plan", "study", "engine", "observations", "statistics"],
  run: ["units", "random", "plan", "study", "line", "engine", "observations", "statistics", "results"],
  worth: ["units", "numeric", "plan", "study", "observations", "statistics", "results"],
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
/** How numbers, clock times and spans are written: a leaf, so that terminal, pictures and page write alike. */
const TEXT = "sim/units/index.ts";

/** Doors, programs, what a bundler starts from, and threads, which are named and not imported. */
const ENTRIES = [
  "sim/index.ts",
  "viz/index.ts",
  "sim/cli/main.ts",
  "sim/run/threads/studyThread.ts",
  "sim/run/queue/queueThread.ts",
  "viz/page/main.tsx",
  "viz/page/vite.config.ts",
  "viz/page/worker/pageWorker.ts",
];
/** Its reason stands at the head of stageState.ts. */
const RING = ["stageState", "positionState", "chainState", "crewState"].map((name) => `sim/engine/state/${name}.ts`);

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

/** What each file imports of the files given, a module loaded later (`await import(...)`) included. */
function graphOf(all: readonly string[]): Map<string, string[]> {
  const known = new Set(all);
  return new Map(
    all.map((file) => {
      const text = readFileSync(join(ROOT, file), "utf8");
      const named = [...text.matchAll(/(?:\bfrom |\bimport\(|^import |new URL\()"(\.[^"?]+)(?:\?[^"]*)?"/gm)];
      const targets = named.map((match) => relative(ROOT, resolve(ROOT, dirname(file), match[1]!)));
      return [file, targets.filter((target) => known.has(target))];
    }),
  );
}

function reach(graph: ReadonlyMap<string, readonly string[]>, from: readonly string[]): Set<string> {
  const found = new Set<string>();
  const open = [...from];
  for (let file = open.pop(); file !== undefined; file = open.pop()) {
    if (found.has(file)) continue;
    found.add(file);
    open.push(...(graph.get(file) ?? []));
  }
  return found;
}

describe("imports", () => {
  it("inside sim/ run one way", () => {
    const toPage = (line: string) => /^sim\/cli\/.* -> viz\//.test(line);
    expect(strayImports("sim", SIM).filter((line) => !toPage(line))).toEqual([]);
  });

  it("inside viz/ run one way, and none but the contract's types come from sim/", () => {
    const toSim = (line: string) => line.endsWith(` -> ${TEXT}`) || (line.startsWith(PAGE) && / -> sim\//.test(line));
    expect(strayImports("viz", VIZ).filter((line) => !toSim(line))).toEqual([]);
    const fromSim = files("viz")
      .flatMap(importsOf)
      .filter(({ file, target }) => !file.startsWith(PAGE) && target.startsWith("sim/") && target !== TEXT);
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

  it("of files are never circular, types included, but for the engine's one ring of things that have each other", () => {
    const graph = graphOf([...files("sim"), ...files("viz")]);
    const rings = [...graph.keys()].filter((file) => {
      if (RING.includes(file)) return false;
      const others = [...graph.get(file)!].filter((next) => next !== file);
      return reach(graph, others).has(file);
    });
    expect(rings).toEqual([]);
    // Each of the ring leads to all of it: one that does not any more is to be struck off the list.
    for (const file of RING) expect([...reach(graph, [file])]).toEqual(expect.arrayContaining(RING));
  });

  it("lead to every file from where a user, a browser or a thread comes in", () => {
    const all = [...files("sim"), ...files("viz")];
    const found = reach(graphOf(all), ENTRIES);
    expect(all.filter((file) => !found.has(file))).toEqual([]);
  });
});
