import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/index.ts";
import { Designs } from "../../../../sim/questions/improve/designs.ts";
import { countDesigns, type Improvement, improve, readImprove } from "../../../../sim/questions/improve/index.ts";
import { moveWords } from "../../../../sim/questions/improve/moveWords.ts";
import { neighbours } from "../../../../sim/questions/improve/search.ts";
import { NO_FILES } from "../../../support/demands.ts";
import { improveQuestion, simulateHere } from "../../../support/improving.ts";

type Json = Record<string, unknown>;

function lorry(name: string, at: string, more: Json = {}): Json {
  return { name, at, crates: 20, headsPerCrate: 10, ...more };
}

/** Two hundred heads take 17 min at the five seconds a head of hanging. All invented. */
function planOf(loads: Json[], [from, to]: [string, string], more: Json = {}): Json {
  return {
    ...{ name: "invented", notes: "Invented for tests." },
    day: {
      start: "05:00",
      shifts: [{ name: "day", from, to }],
      breaks: [{ name: "pause", at: "07:00", length: "10 min", crews: ["line"] }],
    },
    supply: { loads },
    liveHandling: { unloading: { perCrate: "4 s" }, lairageCrates: 200, feeding: { perCrate: "4 s" } },
    crews: [{ name: "line", people: 2 }],
    line: [
      { name: "hanging", kind: "station", cycle: { lognormal: { mean: "5 s", cv: 0.2 } }, crew: "line" },
      { name: "skinning", kind: "station", cycle: "4 s", buffer: 5, crew: "line" },
    ],
    limits: [{ name: "wait", from: "arrival", to: "start of hanging", max: "20 min", source: "invented" }],
    ...more,
  };
}

const QUICK = { search: { days: 2, designs: 16, finalists: 4 }, firstStage: 6, atMost: 20 };

function question(plan: Json, among: Json[], more: Json = {}): Json {
  return { name: "hours", plan, goal: "overtime", allocate: { times: { among } }, ...QUICK, ...more };
}

async function found(json: Json): Promise<Improvement> {
  return (await improve(improveQuestion(json), { simulate: simulateHere })).improvement;
}

const TWO_AT_ONCE = [lorry("first", "06:00"), lorry("second", "06:00")];

describe("hours to move", { timeout: 60_000 }, () => {
  it("brings the second of two lorries later, so that its animals do not wait", async () => {
    const among = [{ load: { name: "second", from: "05:30", to: "07:00" } }];
    const limits = [{ limit: "wait", beyond: "1 %" }];
    const { verdict, answer, recommended } = await found(
      question(planOf(TWO_AT_ONCE, ["06:00", "08:00"]), among, { limits }),
    );
    expect(answer).toBe("yes");
    expect(recommended!.set).toEqual({ "supply.loads.second.at": "06:15" });
    expect(recommended!.limits[0]!.found!.mean).toBe(0);
    // Hanging takes 33 min for both lorries: of the second one's heads those wait over 20 min that are hung in the last 13.
    expect(recommended!.limits[0]!.today!.mean).toBeGreaterThan(0.35);
    expect(recommended!.limits[0]!.today!.mean).toBeLessThan(0.45);
    expect(verdict).toMatch(
      /^Yes: let the lorry “second” come 15 min later, at 06:15: \d\d.* % of heads are outside “wait” today, then 0 %/,
    );
  });

  it("starts a shift later where its animals come then", async () => {
    const plan = planOf([lorry("only", "08:00")], ["06:00", "08:10"]);
    const among = [{ shift: { name: "day", from: "05:30", to: "06:30" } }];
    const { verdict, recommended, allocated } = await found(question(plan, among));
    expect(verdict).toContain("start the shift “day” 15 min later, at 06:15: overtime is");
    expect(recommended!.set).toEqual({ "day.shifts.day.from": "06:15", "day.shifts.day.to": "08:25" });
    expect(allocated.elements[0]!.time!.moments).toEqual(["05:30", "05:45", "06:00", "06:15", "06:30"]);
  });

  it("starts a shift earlier where animals wait for it", async () => {
    const limits = [{ name: "wait", from: "arrival", to: "start of hanging", max: "40 min", source: "invented" }];
    const plan = planOf([lorry("only", "05:00")], ["06:00", "06:30"], { limits });
    const among = [{ shift: { name: "day", from: "05:00", to: "06:00" } }];
    const day = { ...(plan.day as Json), breaks: [] };
    const { verdict, recommended } = await found(
      question({ ...plan, day }, among, { limits: [{ limit: "wait", beyond: "1 %" }] }),
    );
    // The last head is hung 17 min after the start: half past five is too late for it, and a quarter past five early enough.
    expect(recommended!.set).toEqual({ "day.shifts.day.from": "05:15", "day.shifts.day.to": "05:45" });
    expect(verdict).toMatch(/start the shift “day” 45 min earlier, at 05:15: 100 % of heads are outside “wait” today/);
  });

  it("leaves today's hours where no other gain", async () => {
    const among = [{ break: { name: "pause", from: "06:30", to: "07:30" } }];
    const { answer, recommended } = await found(question(planOf([lorry("only", "06:00")], ["06:00", "08:00"]), among));
    expect(answer).toBe("no");
    expect(recommended!.isBase).toBe(true);
  });

  it("never trades a limit of the plan for its goal", async () => {
    // The crew idles until the second lorry comes; one hour earlier ends the day within the shift, and its animals wait half an hour.
    const loads = [lorry("first", "06:00", { crates: 40 }), lorry("second", "06:45")];
    const plan = planOf(loads, ["06:00", "06:50"], { limits: [] });
    const among = [{ load: { name: "second", from: "06:00", to: "06:45", step: "45 min" } }];
    const free = await found(question({ ...plan, day: { ...(plan.day as Json), breaks: [] } }, among));
    expect(free.recommended!.set).toEqual({ "supply.loads.second.at": "06:00" });
    const limits = [{ name: "wait", from: "arrival", to: "start of hanging", max: "40 min", source: "invented" }];
    const bound = await found(question({ ...plan, limits, day: { ...(plan.day as Json), breaks: [] } }, among));
    expect(bound.recommended!.isBase).toBe(true);
  });

  it("keeps the clock of a day whose start its file leaves out", () => {
    const plan = planOf(TWO_AT_ONCE, ["06:00", "08:00"]);
    const { start: _, ...day } = plan.day as Json;
    const json = question({ ...plan, day }, [{ shift: { name: "day", from: "06:00", to: "06:30" } }]);
    expect(new Designs(improveQuestion(json)).of([1])!.change.set).toEqual({
      ...{ "day.start": "06:00", "day.shifts.day.from": "06:15", "day.shifts.day.to": "08:15" },
    });
    const early = question({ ...plan, day }, [{ shift: { name: "day", from: "05:00", to: "06:30" } }]);
    expect(readImprove(early, NO_FILES).faults.map(formatFault)).toEqual([
      expect.stringMatching(
        /shift\.from: 05:00, before the plan's day starts; allowed: 06:00 or later; give the plan's/,
      ),
    ]);
  });

  it("moves lorries closer together or further apart, the first one staying", () => {
    const plan = planOf([lorry("load", "06:00", { repeat: { every: "20 min", times: 3 } })], ["06:00", "08:00"]);
    const { space } = improveQuestion(
      question(plan, [
        { gap: { load: "load", from: "10 min", to: "30 min" } },
        { load: { name: "load", from: "06:00", to: "06:30", step: "30 min" } },
      ]),
    );
    expect(countDesigns(space)).toBe(10);
    expect(space.changeOf([4, 1]).set).toEqual({
      ...{ "supply.loads.load.repeat.every": "1800 s", "supply.loads.load.at": "06:30" },
    });
    expect(space.nameOf([4, 1])).toBe("load, every 30 min, load 06:30");
    const { elements, kind, unit, least, most } = space;
    const allocated = {
      ...{ kind, unit, least, most },
      elements: elements.map((element, index) => ({ ...element, base: space.base[index]! })),
    };
    const words = (counts: number[]) => moveWords({ allocated }, { name: "", counts } as never);
    expect(words([4, 1])).toBe(
      "let the lorries of “load” come every 30 min instead of every 20 min and let the lorries of “load” come 30 min later, the first at 06:30",
    );
    expect(words([2, 0])).toBe("leave it as it is");
    expect(neighbours(space, [2, 0])).toContainEqual([1, 1]);
    expect(neighbours(space, [2, 0]).every(([gap, at]) => gap! >= 0 && gap! <= 4 && at! >= 0 && at! <= 1)).toBe(true);
  });

  it.each([
    [
      { load: { name: "frist", from: "05:00", to: "09:00" } },
      /load\.name: 'frist' is no load of the plan; .* did you mean 'first'/,
    ],
    [{ gap: { load: "first", from: "1 min", to: "3 min" } }, /gap\.load: 'first' is no load of the plan that repeats/],
    [
      { break: { name: "pause", from: "07:30", to: "07:40" } },
      /break\.from: 07:30, but today it is 07:00; allowed: 07:00 or less/,
    ],
    [
      { break: { name: "pause", from: "06:30", to: "06:40" } },
      /break\.to: 06:40, but today it is 07:00; allowed: 07:00 or more/,
    ],
    [{ load: { name: "first", from: "05:00", to: "09:00", step: "1 s" } }, /load\.step: 14401 moments; allowed: 200/],
    [{ load: { name: "first", from: "06:00", to: "06:00" } }, /load\.step: nothing to move/],
    [{ break: { name: "pause", from: "06:30", to: "09:00" } }, /with pause 09:00: .*lies outside the shifts/],
    [{ pause: {} }, /pause/],
    [{ load: { name: "first", from: "6", to: "07:00" } }, /load\.from/],
  ])("refuses %j", (element, fault) => {
    const json = question(planOf(TWO_AT_ONCE, ["06:00", "08:00"]), [element]);
    const faults = readImprove(json, NO_FILES).faults.map(formatFault);
    expect(faults.length).toBeGreaterThan(0);
    expect(faults.join("\n")).toMatch(fault);
  });

  it("refuses what stands twice", () => {
    const load = { load: { name: "first", from: "05:30", to: "06:30" } };
    const json = question(planOf(TWO_AT_ONCE, ["06:00", "08:00"]), [load, load]);
    expect(readImprove(json, NO_FILES).faults.map(formatFault).join()).toMatch(/among\[1\]: load first stands twice/);
  });
});
