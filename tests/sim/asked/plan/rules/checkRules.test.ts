import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../../sim/asked/plan/index.ts";
import { hanging } from "../../../../../sim/asked/plan/rules/checkRules.ts";
import { type Loose, stageOf, wholeFaults, wholeWarnings } from "../wholeMessages.ts";

/** What was changed in the sound whole plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "a vessel emptied when more than full",
    (plan) => (plan.vessels[0].emptyAt = "900 kg"),
    ["vessels[0].emptyAt: emptying starts at more than the vessel holds; allowed: 800 kg or less; lower it"],
  ],
  [
    "an emptying by a crew that is not there",
    (plan) => (plan.vessels[0].crew = "maintainance"),
    [
      "vessels[0].crew: 'maintainance' is not a crew; allowed: 'fork-lift', 'kill', 'dressing', 'relief', 'maintenance'; did you mean 'maintenance'?",
    ],
  ],
  [
    "a vessel named twice",
    (plan) => (plan.vessels[1].name = "blood tank"),
    [
      "vessels[1].name: 'blood tank' appears twice among the vessels; allowed: each name once; rename one of them",
      "line[4].takesOff[0].vessel: 'skin bin' is not a vessel; allowed: 'blood tank', 'viscera bin'; name one of these or add the vessel",
      "line[5].takesOff[0].vessel: 'skin bin' is not a vessel; allowed: 'blood tank', 'viscera bin'; name one of these or add the vessel",
    ],
  ],
];

describe("what a plan says of vessels", () => {
  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    expect(wholeFaults(spoil)).toEqual(expected);
  });
});

const withPace = (name: string, pace: object[]) => (plan: Loose) => {
  stageOf(plan, name).pace = pace;
};

describe("speeds by the hour", () => {
  it("come in the order of their hours, each once", () => {
    const parts = [{ from: "07:00", speed: 0.8 }, { from: "06:30" }];
    expect(wholeFaults(withPace("hanging", parts))).toEqual([
      'line[0].pace[1].from: "06:30" is not after "07:00"; allowed: hours in their order, each once; put the entries in order',
    ]);
    expect(wholeFaults(withPace("kill chain", [{ from: "07:00" }, { from: "07:00" }]))[0]).toMatch(
      /is not after "07:00"/,
    );
  });

  it("are no faster than ten times and no slower than a hundredth, with rates above 0", () => {
    expect(wholeFaults(withPace("hanging", [{ from: "07:00", speed: 0 }]))[0]).toMatch(
      /^line\[0\]\.pace\[0\]\.speed: /,
    );
    expect(wholeFaults(withPace("hanging", [{ from: "07:00", atMost: "0 /h" }]))[0]).toMatch(/0 \/h.*more than 0/);
  });

  it("are warned of where an upper rate is below the target", () => {
    const [found] = wholeWarnings(withPace("hanging", [{ from: "07:00", atMost: "10 /h" }])).filter((words) =>
      words.includes("pace"),
    );
    expect(found).toMatch(
      /^line\[0\]\.pace\[0\]\.atMost: from 07:00 on 'hanging' lets through at most 10 \/h, less than the target/,
    );
    expect(wholeWarnings(withPace("hanging", [{ from: "07:00", atMost: "5000 /h" }])).join()).not.toContain("pace");
  });
});

const station = { kind: "station", name: "hanging", cycle: "5 s" };

const chain = { kind: "chain", name: "kill chain" };

describe("hanging", () => {
  it("refuses a line that begins with anything but a station", () => {
    expect(hanging({ line: [chain] }).map(formatFault)).toEqual([
      'line[0]: the line begins with a chain; allowed: a station; put a station before it that hangs the heads, say { "kind": "station", "name": "hanging", "cycle": "5 s" }',
    ]);
    expect(hanging({ line: [{ kind: "dwell", name: "d" }] })).toHaveLength(1);
  });

  it("refuses a way onto a chain, by order or by name, and allows one off it", () => {
    const message =
      "line[0].travel: a travel time onto the chain 'kill chain', but its shackles do not wait for heads; allowed: none before a chain; delete it, or make the chain longer";
    expect(hanging({ line: [{ ...station, travel: "5 s" }, chain] }).map(formatFault)).toEqual([message]);
    const named = [{ ...station, travel: "5 s", next: "kill chain" }, { kind: "station", name: "b" }, chain];
    expect(hanging({ line: named }).map(formatFault)).toEqual([message]);
    expect(hanging({ line: [station, { ...chain, travel: "5 s" }, { kind: "station", name: "b" }] })).toEqual([]);
  });
});

const board = (stops: string[], changes: object = {}) => ({
  ...{ name: "board", stops, uptime: { exponential: { mean: "2 h" } }, repair: "5 min" },
  ...changes,
});

const withBoard =
  (...args: Parameters<typeof board>) =>
  (plan: Loose) => {
    plan.sharedBreakdowns = [board(...args)];
  };

describe("shared breakdowns", () => {
  it("may stop stations, on chains or not, chains and crate steps, each named once", () => {
    const names = (plan: Loose) =>
      plan.line.filter(({ kind, leftOut }: Loose) => kind !== "dwell" && !leftOut).map(({ name }: Loose) => name);
    expect(wholeFaults((plan) => withBoard([...names(plan), "crate washer"])(plan))).toEqual([]);
    expect(wholeFaults(withBoard(["skinning machine", "skinning machine"]))).toEqual([
      "sharedBreakdowns[0].stops[1]: 'skinning machine' appears twice among what it stops; allowed: each name once; delete one of them",
    ]);
  });

  it("name what is there and can stop", () => {
    expect(wholeFaults(withBoard(["skining machine", "crate washer"]))[0]).toMatch(
      /^sharedBreakdowns\[0\]\.stops\[0\]: 'skining machine' is not a stage or crate step; .*did you mean 'skinning machine'\?$/,
    );
    expect(wholeFaults(withBoard(["chilling", "skinning machine"]))[0]).toMatch(
      /'chilling' is a dwell: nothing runs there/,
    );
  });

  it("are repaired by a crew that there is, and have names of their own", () => {
    expect(wholeFaults(withBoard(["skinning machine", "crate washer"], { crew: "fiters" }))[0]).toMatch(
      /^sharedBreakdowns\[0\]\.crew: 'fiters' is not a crew/,
    );
    const twice = wholeFaults((plan) => {
      plan.sharedBreakdowns = [
        board(["skinning machine", "crate washer"]),
        board(["skinning machine", "crate washer"]),
      ];
    });
    expect(twice).toEqual([
      "sharedBreakdowns[1].name: 'board' appears twice among the shared breakdowns; allowed: each name once; rename one of them",
    ]);
  });

  it("are warned of where they stop one station alone", () => {
    expect(wholeWarnings(withBoard(["skinning machine"]))).toContain(
      `sharedBreakdowns[0].stops: it stops 'skinning machine' alone; name what else it stops, or write it among the "breakdowns" of 'skinning machine'`,
    );
    expect(wholeWarnings(withBoard(["skinning machine", "crate washer"]))).not.toContainEqual(
      expect.stringContaining("sharedBreakdowns"),
    );
  });
});
