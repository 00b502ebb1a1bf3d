import { describe, expect, it } from "vitest";
import { FILES, IMPORTS, type Import, roomOf } from "./importGraph.ts";

/** What each wing of sim/ may import from, besides itself. Data flows one way: from text to numbers, from numbers to answers. */
const WINGS: Record<string, string[]> = {
  text: [],
  maths: [],
  asked: ["text", "maths"],
  day: ["text", "maths", "asked"],
  days: ["text", "maths", "asked", "day"],
  questions: ["text", "maths", "asked", "day", "days"],
  cli: ["text", "maths", "asked", "day", "days", "questions"],
};
/** What each room may import from its own wing. */
const ROOMS: Record<string, string[]> = {
  "text/units": [],
  "text/csv": [],
  "text/kinds": [],
  "maths/numeric": [],
  "maths/varying": [],
  "maths/random": ["maths/numeric", "maths/varying"],
  "maths/chilling": ["maths/numeric"],
  "maths/statistics": ["maths/numeric", "maths/random"],
  "asked/plan": [],
  "asked/study": ["asked/plan"],
  "day/line": [],
  "day/engine": ["day/line"],
  "day/course": ["day/line", "day/engine"],
  "day/observations": ["day/line", "day/engine"],
  "days/results": [],
  "days/decision": ["days/results"],
  "days/run": ["days/results", "days/decision"],
  "questions/estimate": [],
  "questions/doubt": [],
  "questions/fit": [],
  "questions/calibrate": [],
  "questions/options": [],
  "questions/why": ["questions/estimate"],
  "questions/try": ["questions/why"],
  "questions/season": [],
  "questions/week": [],
  "questions/size": ["questions/estimate"],
  "questions/dossier": ["questions/estimate", "questions/size", "questions/options"],
  "questions/new": ["questions/size"],
  "questions/improve": ["questions/estimate", "questions/options"],
};
/** The same for viz/; text is the one wing of sim/ that all of it may use. */
const VIZ: Record<string, string[]> = {
  frame: [],
  marks: ["frame"],
  words: ["frame"],
  pictures: ["frame", "marks", "words"],
  report: ["frame", "marks", "pictures", "words"],
  build: [],
  page: ["frame", "marks", "pictures", "words", "report"],
};
/** The one room of viz/ that runs the simulator, in the browser's workers; nothing else may import it. */
const PAGE = "viz/page/";
/** Read without the rest of their room: the words of a plan, which days need alone, and the cautions. */
const SIDE_DOORS = ["sim/asked/plan/plan.ts", "viz/report/cautions.ts"];
/** Doors, programs, what a bundler starts from, and threads, which are named and not imported. */
const ENTRIES = [
  "sim/index.ts",
  "viz/index.ts",
  "sim/cli/main.ts",
  "sim/cli/checkout.ts",
  "sim/days/run/threads/lastingThread.ts",
  "sim/days/run/threads/studyThread.ts",
  "sim/days/run/queue/queueThread.ts",
  "viz/page/main.tsx",
  "viz/build/page.config.ts",
  "viz/build/program.config.ts",
  "viz/page/worker/pageWorker.ts",
];
/** Its reason stands at the head of stageState.ts. */
const RING = ["stageState", "positionState", "chainState", "crewState", "vesselState", "breakdownState"].map(
  (name) => `sim/day/engine/state/${name}.ts`,
);

const EVERY = [...IMPORTS.values()].flat();

function isAllowed({ file, target }: Import): boolean {
  const [from, to] = [roomOf(file), roomOf(target)];
  const [fromTop, toTop] = [file.split("/")[0]!, target.split("/")[0]!];
  if (fromTop === "viz")
    return toTop === "sim" ? /^text\//.test(to) : from === to || to === "" || (VIZ[from] ?? []).includes(to);
  if (toTop === "viz") return from === "cli";
  const [fromWing, toWing] = [from.split("/")[0]!, to.split("/")[0]!];
  if (fromWing !== toWing) return (WINGS[fromWing] ?? []).includes(toWing);
  return from === to || (ROOMS[from] ?? []).includes(to);
}

const told = (imports: readonly Import[]) => imports.map(({ file, target }) => `${file} -> ${target}`);

function reach(from: readonly string[]): Set<string> {
  const found = new Set<string>();
  const open = [...from];
  for (let file = open.pop(); file !== undefined; file = open.pop()) {
    if (found.has(file)) continue;
    found.add(file);
    open.push(...(IMPORTS.get(file) ?? []).map(({ target }) => target));
  }
  return found;
}

describe("imports", () => {
  const inRooms = EVERY.filter(({ file }) => roomOf(file) !== "");

  it("run one way from wing to wing, and from room to room within a wing", () => {
    expect(inRooms.length).toBeGreaterThan(1000);
    const ofContract = ({ target }: Import) => target === "viz/contract.ts";
    const pageToSim = ({ file, target }: Import) => file.startsWith(PAGE) && target.startsWith("sim/");
    expect(told(inRooms.filter((each) => !isAllowed(each) && !ofContract(each) && !pageToSim(each)))).toEqual([]);
  });

  it("name every room there is", () => {
    const rooms = new Set(FILES.filter((file) => file.startsWith("sim/")).map(roomOf));
    expect([...rooms].sort()).toEqual(["", "cli", ...Object.keys(ROOMS)].sort());
  });

  it("go from room to room through doors", () => {
    const others = inRooms.filter(
      ({ file, target }) => `${file.split("/")[0]}/${roomOf(file)}` !== `${target.split("/")[0]}/${roomOf(target)}`,
    );
    const through = ({ target }: Import) =>
      target.endsWith("/index.ts") || target === "viz/contract.ts" || SIDE_DOORS.includes(target);
    expect(told(others.filter((each) => !through(each)))).toEqual([]);
  });

  it("of pictures and words take nothing but types from the simulator, through the contract, and how text is written", () => {
    const fromSim = EVERY.filter(
      ({ file, target }) => file.startsWith("viz/") && !file.startsWith(PAGE) && /^sim\/(?!text\/)/.test(target),
    );
    expect(fromSim.length).toBeGreaterThan(0);
    expect(told(fromSim.filter(({ typeOnly }) => !typeOnly))).toEqual([]);
    expect(new Set(fromSim.map(({ file }) => file))).toEqual(new Set(["viz/contract.ts"]));
  });

  it("of the page go to the simulator's rooms that a browser has", () => {
    const fromSim = EVERY.filter(({ file, target }) => file.startsWith(PAGE) && target.startsWith("sim/"));
    expect(fromSim.length).toBeGreaterThan(10);
    expect(told(fromSim.filter(({ target }) => roomOf(target) === "cli"))).toEqual([]);
  });

  it("are never circular, types included, but for the engine's one ring of things that have each other", () => {
    const rings = FILES.filter((file) => {
      if (RING.includes(file)) return false;
      const others = IMPORTS.get(file)!.map(({ target }) => target);
      return reach(others).has(file);
    });
    expect(rings).toEqual([]);
    // Each of the ring leads to all of it: one that does not any more is to be struck off the list.
    for (const file of RING) expect([...reach([file])]).toEqual(expect.arrayContaining(RING));
  });

  it("lead to every file from where a user, a browser or a thread comes in", () => {
    const found = reach(ENTRIES);
    expect(FILES.filter((file) => !found.has(file))).toEqual([]);
  });
});
