import { describe, expect, it } from "vitest";
import type { Breakdown, Plan, ShareBy, Stage, Supply } from "../../../../../sim/asked/plan/index.ts";
import { responsesOf, slopesOf, slopesThatHold } from "../../../../../sim/day/observations/index.ts";
import { breakdown } from "../../../../support/breakdowns.ts";
import {
  chain,
  crateStep,
  crew,
  dwell,
  exponential,
  manual,
  onChain,
  pause,
  planOf,
  saturated,
  station,
  stream,
} from "../../../../support/plans.ts";
import { shared } from "../../../../support/sharedBreakdowns.ts";

const TWO = [station("a", exponential(3)), station("b", exponential(4), { buffer: 2 })];
const failing = (changes: Partial<Breakdown>) =>
  breakdown(0, 0, { uptimeSeconds: exponential(60), repairSeconds: exponential(9), ...changes });
const withFailure = (changes: Partial<Breakdown>, positions = 1) => [
  station("a", exponential(3)),
  station("b", exponential(4), { positions, breakdowns: [failing(changes)] }),
];
const plan = (line: Stage[], changes: Partial<Plan> = {}, supply: Supply = saturated(9)) =>
  planOf(supply, line, changes);
const onDay = (changes: Partial<Plan["day"]>, crews: Plan["crews"] = []) => {
  const plain = plan(TWO, { crews });
  return { ...plain, day: { ...plain.day, ...changes } };
};
const shift = (name: string, from: number, to: number) => ({ name, fromSeconds: from, toSeconds: to });
const lorry = (name: string, atSeconds: number, delay: null | ReturnType<typeof exponential> = null) => ({
  ...{ name, atSeconds, delay, comesShare: 1, crates: 2, headsPerCrate: 3, deadOnArrivalShare: 0 },
  liveWeightKg: { family: "constant" as const, value: 2.5 },
});
const handling = (changes: object, steps: object = {}) => ({
  way: "lift" as const,
  toHanging: [crateStep("unloading", exponential(4), steps)],
  back: [],
  cratesAtHanging: 1,
  fleet: null,
  ...changes,
});
const loaded = (liveHandling: Plan["liveHandling"], loads = [lorry("early", 1)]) =>
  plan(TWO, { liveHandling }, { kind: "loads", loads });
const vessel = (whenFull: "stop" | "spill") => ({
  ...{ name: "tank", capacityKg: 1, emptyAtKg: 0.8, emptyingSeconds: 9, crew: null },
  whenFull,
});
const blood = [{ name: "blood", share: 0.04, of: "live weight" as const, vessel: "tank" }];

const SHARE_BY_TIME: ShareBy = {
  of: { kind: "time", from: { stage: null, moment: "entry" }, to: { stage: "a", moment: "end" } },
  ...{ between: "a line", points: [{ at: 0, share: 0 }] },
};
const SHARE_BY_WEIGHT: ShareBy = { of: { kind: "live weight" }, between: "a line", points: [{ at: 2, share: 0.1 }] };

const NONE_HOLDS: [what: string, plan: Plan, reason: RegExp][] = [
  [
    "animals there when the day begins",
    {
      ...loaded(handling({})),
      atStart: {
        crates: [
          { lot: null, forSeconds: 9, crates: 1, headsPerCrate: 3, liveWeightKg: { family: "constant", value: 2.5 } },
        ],
        carcasses: [],
      },
    },
    /there when the day begins is told apart/,
  ],
  [
    "breakdowns by the clock",
    plan(withFailure({ clock: "calendar" })),
    /jam \(b\) goes by the clock and also strikes an idle/,
  ],
  [
    "a share by the time that heads took",
    plan([station("a", exponential(3), { removals: [{ as: "damaged", share: 0.1, shareBy: SHARE_BY_TIME }] })]),
    /how long a head took decides whether it leaves the row at a/,
  ],
  [
    "a share by weight where heads pass each other",
    plan([
      station("a", exponential(3), {
        positions: 2,
        removals: [{ as: "damaged", share: 0.1, shareBy: SHARE_BY_WEIGHT }],
      }),
    ]),
    /heads pass each other at a, and their weights decide which leave the row at a/,
  ],
  [
    "a speed that changes at an hour",
    plan([station("a", exponential(3), { pace: [{ fromSeconds: 60, speed: 0.5, mostPerSecond: null }] })]),
    /a changes its speed at an hour/,
  ],
  [
    "a chain whose speed changes at an hour",
    plan([TWO[0]!, chain("rail", 9, 1, [], { pace: [{ fromSeconds: 60, speed: 0.5, mostPerSecond: null }] })]),
    /rail changes its speed at an hour/,
  ],
  [
    "a breakdown of several stations",
    plan(TWO, { sharedBreakdowns: [shared(["a", "b"], 60, 9)] }),
    /board stops several places at once/,
  ],
  ["a break", onDay({ breaks: [pause("tea", 60, 20)] }), /breaks begin at an hour/],
  [
    "a planned safe stop",
    onDay({ breaks: [pause("tea", 60, 20)], safeStop: { from: "a", to: "b" } }),
    /breaks begin at an hour/,
  ],
  [
    "a second shift",
    onDay({ shifts: [shift("early", 0, 60), shift("late", 60, 120)] }, [crew("c", [1, 1])]),
    /shifts end/,
  ],
  [
    "hanging that stops at an hour",
    onDay({ closing: { rule: "stop hanging", atSeconds: 60 } }),
    /hanging stops at an hour/,
  ],
  [
    "heads turned away",
    plan(TWO, {}, stream(exponential(3), 9, "turn away")),
    /turned away when the first stage is full/,
  ],
  [
    "a share sent to trim",
    plan([station("a", exponential(3), { diversions: [{ to: "t", share: 0.1 }] }), station("t", 1, { offLine: true })]),
    /heads leave the row at a, so/,
  ],
  [
    "a hold before stunning",
    plan(TWO, { stunned: { from: "a", to: "b", hold: true, late: null } }),
    /a begins a head only when nothing will make it wait/,
  ],
  [
    "help for stunned heads that wait",
    plan(TWO, {
      stunned: {
        from: "a",
        to: "b",
        hold: false,
        late: { afterSeconds: 9, help: "stun again", takesSeconds: 3, crew: null },
      },
    }),
    /help is called to a head that waits too long for b/,
  ],
  [
    "a limit of weight",
    plan([
      station("a", exponential(3), { weights: { fromKg: 2, toKg: 3, else: "t" } }),
      station("t", 1, { offLine: true }),
    ]),
    /heads leave the row at a by weight/,
  ],
  [
    "heads lost to a breakdown",
    plan(withFailure({ headInHand: { to: "t" } })),
    /heads leave the row at b when it breaks down/,
  ],
  [
    "a chain",
    plan([TWO[0]!, chain("rail", 9, 1, [onChain("wash", 2, 2, exponential(3))])]),
    /just misses a shackle of rail/,
  ],
  [
    "a crew with two stations",
    plan([manual("a", exponential(3), "pair"), manual("b", exponential(4), "pair")], { crews: [crew("pair", 1)] }),
    /pair has more than one job, and who goes where may change/,
  ],
  [
    "a crew with two machines to repair",
    plan(withFailure({ crew: "fitters" }, 2), { crews: [crew("fitters", 1)] }),
    /fitters has more than one job/,
  ],
  [
    "relief",
    plan([manual("a", exponential(3), "own", { crews: ["own", "relief"] })], {
      crews: [crew("own", 1), crew("relief", 1)],
    }),
    /more than one crew works at a/,
  ],
  [
    "a vessel that stops the line",
    plan([station("a", exponential(3), { byProducts: blood })], { vessels: [vessel("stop")] }),
    /tank stops the line when it is full/,
  ],
  [
    "weights that pass each other",
    plan([
      station("a", exponential(3), { positions: 2 }),
      station("b", exponential(4), { weightFactor: { perKg: 0.4, atKg: 2.5 } }),
    ]),
    /heads pass each other at a, and their weights/,
  ],
  [
    "a breakdown of several positions at once",
    plan(withFailure({ scope: "station" }, 2)),
    /counts the time in which any of several/,
  ],
  [
    "positions that wear",
    plan(withFailure({ uptimeSeconds: { family: "gamma", mean: 60, cv: 0.5 } }, 2)),
    /makes the positions of its station differ/,
  ],
  ["two fixed times", plan([station("a", 3), dwell("bleeding", 90, 30)]), /two times never vary \(a and bleeding\)/],
  ["crates by the stack", loaded(handling({}, { cratesPerCycle: 4 })), /unloading takes as many crates as are there/],
  ["crates side by side", loaded(handling({}, { positions: 2 })), /crates pass each other at unloading/],
  [
    "a fleet of crates",
    loaded(handling({ back: [crateStep("washing", exponential(3))], fleet: { crates: 8, awaySeconds: 60 } })),
    /lorries wait for crates of a limited number/,
  ],
];

describe("slopes that one run cannot tell", () => {
  it.each(NONE_HOLDS)("are withheld, all of them and with the reason, where there is %s", (_, withIt, reason) => {
    const slopes = slopesOf(withIt);
    expect(slopes.length).toBeGreaterThan(0);
    for (const { withheld } of slopes) expect(withheld).toMatch(reason);
    expect(slopesThatHold(withIt)).toEqual([]);
  });

  it("are no responses: there is no figure to ask for", () => {
    const keys = (of: Plan) => responsesOf(of).filter(({ key }) => key.startsWith("slope."));
    expect(keys(plan(TWO)).length).toBeGreaterThan(0);
    expect(keys(onDay({ breaks: [pause("tea", 60, 20)] }))).toEqual([]);
  });

  it("of work that brings breakdowns are withheld, and those of its repairs and of other stages are given", () => {
    const held = Object.fromEntries(
      slopesOf(plan(withFailure({}))).map(({ parameter, stage, withheld }) => [`${stage} ${parameter}`, withheld]),
    );
    const reason = "b breaks down: more work, or less time between stops, adds whole stops, which one day cannot show";
    expect(held).toEqual({ "a cycle time": null, "b cycle time": reason, "b repair time": null, "b uptime": reason });
  });

  it("of a load are withheld where loads may come in another order", () => {
    const reasons = (loads: ReturnType<typeof lorry>[]) =>
      slopesOf(loaded(handling({}), loads))
        .filter(({ parameter }) => parameter === "arrival")
        .map(({ withheld }) => withheld);
    expect(reasons([lorry("early", 1), lorry("late", 600)])).toEqual([null, null]);
    expect(reasons([lorry("early", 1, exponential(60))])[0]).toMatch(/^delays differ/);
    expect(reasons([lorry("one", 5), lorry("other", 5)])[0]).toMatch(/^loads come at the same moment/);
  });
});

describe("slopes that one run can tell", () => {
  const GIVEN: [what: string, plan: Plan][] = [
    ["a plain row", plan(TWO)],
    ["one fixed time among times that vary", plan([TWO[0]!, dwell("bleeding", 90, 30)])],
    [
      "crews with one job each",
      plan([manual("a", exponential(3), "one", { positions: 2 })], { crews: [crew("one", 1)] }),
    ],
    ["several positions that fail without memory", plan(withFailure({}, 2))],
    ["a fitter with one machine", plan(withFailure({ crew: "fitter" }), { crews: [crew("fitter", 1)] })],
    [
      "a share by weight where nobody passes",
      plan([station("a", exponential(3), { removals: [{ as: "damaged", share: 0.1, shareBy: SHARE_BY_WEIGHT }] })]),
    ],
    ["a gate", plan(TWO, { gates: [{ name: "gate", from: "a", to: { stage: "b", moment: "start" }, atMost: 1 }] })],
    [
      "a vessel that spills",
      plan([station("a", exponential(3), { byProducts: blood })], { vessels: [vessel("spill")] }),
    ],
    [
      "work by weight where nobody passes",
      plan([station("a", exponential(3), { weightFactor: { perKg: 0.4, atKg: 2.5 } })]),
    ],
  ];

  it.each(GIVEN)("are given where there is %s", (_, withIt) => {
    expect(slopesThatHold(withIt).length).toBeGreaterThan(0);
  });
});
