import { describe, expect, it } from "vitest";
import { formatFault, readPlan } from "../../../../sim/asked/plan/index.ts";
import { sampleFiles, samplePlan } from "./samplePlan.ts";

// biome-ignore lint/suspicious/noExplicitAny: these rows write what a plan may not hold
type Loose = any;

function messages(json: unknown): string[] {
  return readPlan(json, sampleFiles).faults.map(formatFault);
}

/** What was changed in the sound sample plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  // shape
  [
    "a bare number where a unit is due",
    (plan) => (plan.line[0].cycle = 5),
    ['line[0].cycle: 5 has no unit; allowed: a time in ms, s, min, h or d; write for example "4.2 s"'],
  ],
  [
    "a unit that is spelt otherwise",
    (plan) => (plan.day.breaks[0].length = "15 minutes"),
    [
      'day.breaks[0].length: "15 minutes" has the unit \'minutes\'; allowed: a time in ms, s, min, h or d; did you mean "15 min"?',
    ],
  ],
  [
    "a cycle of no time at all",
    (plan) => (plan.line[0].cycle = "0 s"),
    ['line[0].cycle: "0 s" is too small; allowed: more than 0; write for example "4.2 s"'],
  ],
  [
    "an unknown key",
    (plan) => (plan.crews[0].peopel = 3),
    [
      "crews[0].peopel: unknown key; allowed: 'name', 'people', 'rule', 'walking', 'absent', 'rotation', 'ill', 'cover', 'atLeast', 'leaves', 'pay'; did you mean 'people'?",
    ],
  ],
  [
    "a key that reaches for the prototype",
    (plan) => Object.defineProperty(plan.crews[0], "__proto__", { value: {}, enumerable: true }),
    [
      "crews[0].__proto__: unknown key; allowed: 'name', 'people', 'rule', 'walking', 'absent', 'rotation', 'ill', 'cover', 'atLeast', 'leaves', 'pay'; delete it or write one of these",
    ],
  ],
  [
    "a prototype key among the people of a crew",
    (plan) => (plan.crews[1].people = JSON.parse('{"early": 3, "late": 2, "__proto__": 4}')),
    [
      "crews[1].people.__proto__: '__proto__' is not a shift; allowed: 'early', 'late'; name one of these or add the shift",
    ],
  ],
  [
    "a missing name",
    (plan) => delete plan.name,
    [
      'name: missing; allowed: 1 to 60 printable characters, none of them a space at either end; write a name such as "skinning"',
    ],
  ],
  [
    "a name that every object answers to",
    (plan) => (plan.name = "constructor"),
    [
      "name: 'constructor' is a reserved word; allowed: 1 to 60 printable characters, none of them a space at either end; write a name such as \"skinning\"",
    ],
  ],
  [
    "a name that is too long",
    (plan) => (plan.name = "x".repeat(61)),
    [
      'name: the name has 61 characters; allowed: 1 to 60 printable characters, none of them a space at either end; write a name such as "skinning"',
    ],
  ],
  [
    "a name with a character that cannot be seen",
    (plan) => (plan.name = "a\u202Eb"),
    [
      'name: "a\u202Eb" contains an invisible character; allowed: 1 to 60 printable characters, none of them a space at either end; write a name such as "skinning"',
    ],
  ],
  [
    "a word that is not one of the choices",
    (plan) => (plan.crews[0].rule = "longest queu"),
    [
      "crews[0].rule: \"longest queu\" is not one of the choices; allowed: 'furthest downstream', 'longest queue', 'fixed order'; did you mean 'longest queue'?",
    ],
  ],
  [
    "a kind of stage that there is not",
    (plan) => (plan.line[2].kind = "dwel"),
    ["line[2].kind: \"dwel\" is not one of the choices; allowed: 'station', 'dwell', 'chain'; did you mean 'dwell'?"],
  ],
  [
    "a stage without a kind",
    (plan) => delete plan.line[2].kind,
    ["line[2].kind: missing; allowed: 'station', 'dwell', 'chain'; write one of these"],
  ],
  [
    "too many positions",
    (plan) => (plan.line[0].positions = 65),
    ["line[0].positions: 65 is too large; allowed: 64 or less"],
  ],
  [
    "half a position",
    (plan) => (plan.line[0].positions = 1.5),
    ["line[0].positions: 1.5 is not whole; allowed: a whole number"],
  ],
  [
    "a buffer in words",
    (plan) => (plan.line[0].buffer = "none"),
    ['line[0].buffer: "none" is of the wrong kind; allowed: a number or null'],
  ],
  [
    "an empty line",
    (plan) =>
      Object.assign(plan, { line: [], limits: [], sources: [], day: { start: "05:00", shifts: plan.day.shifts } }),
    ["line: 0 entries; allowed: 1 or more entries"],
  ],
  [
    "a share above 1",
    (plan) => (plan.supply.loads[0].deadOnArrival = 2),
    [
      'supply.loads[0].deadOnArrival: 2 is out of range; allowed: a share from 0 to 1, or from 0 % to 100 %; write for example "2.5 %" or 0.025',
    ],
  ],
  [
    "a clock time in another form",
    (plan) => (plan.day.shifts[0].from = "6 am"),
    [
      'day.shifts[0].from: "6 am" is not a clock time; allowed: hours and minutes on the 24-hour clock ("25:30" is half past one on the next day); write for example "06:00"',
    ],
  ],
  [
    "a limit without a source",
    (plan) => delete plan.limits[0].source,
    ["limits[0].source: missing; allowed: a text in double quotes"],
  ],
  [
    "a limit with an empty source",
    (plan) => (plan.limits[0].source = ""),
    ["limits[0].source: 0 characters; allowed: 1 or more characters"],
  ],
  [
    "a point that is none",
    (plan) => (plan.limits[0].from = "stunning"),
    [
      'limits[0].from: "stunning" is not a point on a head\'s way; allowed: "arrival", "leaving the line", or "entry to", "start of", "end of" or "exit from" and the name of a stage; write for example "end of stunning"',
    ],
  ],
  [
    "a closing rule denied",
    (plan) => (plan.day.closing = { finish: false }),
    ["day.closing.finish: false is not one of the choices; allowed: true; write one of these"],
  ],
  [
    "two kinds of supply",
    (plan) => (plan.supply.saturated = { heads: 5 }),
    ["supply: 2 keys (loads, saturated); allowed: exactly one of loads, stream, saturated; keep one"],
  ],
  // distributions
  [
    "an unknown distribution",
    (plan) => (plan.line[0].cycle = { lognorml: { mean: "5 s", cv: 0.3 } }),
    [
      "line[0].cycle.lognorml: unknown key; allowed: 'exponential', 'lognormal', 'gamma', 'weibull', 'erlang', 'normal', 'uniform', 'triangular', 'pert', 'empirical'; did you mean 'lognormal'?",
    ],
  ],
  [
    "two distributions in one",
    (plan) => (plan.line[0].travel = { exponential: { mean: "5 s" }, gamma: { mean: "5 s", cv: 1 } }),
    [
      "line[0].travel: 2 keys (exponential, gamma); allowed: exactly one of exponential, lognormal, gamma, weibull, erlang, normal, uniform, triangular, pert, empirical; keep one",
    ],
  ],
  [
    "a distribution with a missing and a wrong parameter",
    (plan) => (plan.line[0].cycle = { lognormal: { cv: 0 } }),
    [
      'line[0].cycle.lognormal.mean: missing; allowed: a time in ms, s, min, h or d; write for example "4.2 s"',
      "line[0].cycle.lognormal.cv: 0 is too small; allowed: more than 0",
    ],
  ],
  [
    "a mode outside its limits",
    (plan) => (plan.line[0].cycle = { triangular: { min: "3 s", mode: "2 s", max: "5 s" } }),
    [
      "line[0].cycle.triangular: the mode lies outside min to max; allowed: min <= mode <= max; put the values in order",
    ],
  ],
  [
    "limits the wrong way round",
    (plan) => (plan.line[0].cycle = { uniform: { min: "3 s", max: "3 s" } }),
    ["line[0].cycle.uniform: min is not smaller than max; allowed: min < max; put the values in order"],
  ],
  [
    "part of a phase",
    (plan) => (plan.line[0].cycle = { erlang: { mean: "3 s", k: 0.5 } }),
    ["line[0].cycle.erlang.k: 0.5 is not whole; allowed: a whole number"],
  ],
  [
    "observed values that are all nothing",
    (plan) => (plan.line[0].cycle = { empirical: ["0 s", "0 s"] }),
    ["line[0].cycle.empirical: nothing but zeros; allowed: at least one value above 0; check the values"],
  ],
  // CSV files
  [
    "a CSV file that is not there",
    (plan) => (plan.line[3].cycle.empirical.csv = "time.csv"),
    [
      "line[3].cycle.empirical.csv: 'time.csv' cannot be read (no such file); allowed: a file, its path given from the folder of the plan; check the path",
    ],
  ],
  [
    "a column that is not there",
    (plan) => (plan.line[3].cycle.empirical.column = "second"),
    ["line[3].cycle.empirical.column: 'second' is not a column; allowed: 'head', 'seconds'; did you mean 'seconds'?"],
  ],
  [
    "a unit that measures something else",
    (plan) => (plan.line[3].cycle.empirical.unit = "kg"),
    [
      "line[3].cycle.empirical.unit: 'kg' is not a unit of time; allowed: 'ms', 's', 'min', 'h', 'd'; write for example \"s\"",
    ],
  ],
  // names and references
  [
    "a crew that is not there",
    (plan) => (plan.line[0].crew = "hangin"),
    ["line[0].crew: 'hangin' is not a crew; allowed: 'hanging', 'skinning'; did you mean 'hanging'?"],
  ],
  [
    "a crew of a crate step that is not there",
    (plan) => (plan.liveHandling.unloading.crew = "drivers"),
    [
      "liveHandling.unloading.crew: 'drivers' is not a crew; allowed: 'hanging', 'skinning'; name one of these or add the crew",
    ],
  ],
  [
    "a break for a crew and a stage that are not there",
    (plan) => Object.assign(plan.day.breaks[1], { crews: ["hangin"], stages: ["stuning"] }),
    [
      "day.breaks[1].crews[0]: 'hangin' is not a crew; allowed: 'hanging', 'skinning'; did you mean 'hanging'?",
      "day.breaks[1].stages[0]: 'stuning' is not a stage; allowed: 'hanging', 'stunning', 'bleeding', 'skinning', 'chilling'; did you mean 'stunning'?",
    ],
  ],
  [
    "a limit from a stage that is not there",
    (plan) => (plan.limits[0].from = "end of stuning"),
    [
      "limits[0].from: 'stuning' is not a stage; allowed: 'hanging', 'stunning', 'bleeding', 'skinning', 'chilling'; did you mean 'stunning'?",
    ],
  ],
  [
    "people in a shift that is not there",
    (plan) => (plan.crews[1].people = { erly: 3, late: 2 }),
    ["crews[1].people.erly: 'erly' is not a shift; allowed: 'early', 'late'; did you mean 'early'?"],
  ],
  [
    "a name that stands twice in each list",
    (plan) => {
      plan.crews.push({ name: "hanging", people: 1 });
      plan.line.push({ name: "chilling", kind: "dwell", places: 1, dwell: "1 s" });
      plan.limits[1].name = "stun to stick";
      plan.day.shifts[1].name = "early";
      plan.crews[1].people = 2;
      plan.day.breaks[1].name = "first break";
      plan.line[3].breakdowns.push({ name: "blade", uptime: "1 h", repair: "1 s" });
      plan.line[1].removals.push({ as: "condemned", share: 0.1 });
      plan.supply.loads[1].name = "lorry 2";
    },
    [
      "crews[2].name: 'hanging' appears twice among the crews; allowed: each name once; rename one of them",
      "line[5].name: 'chilling' appears twice among the stages; allowed: each name once; rename one of them",
      "limits[1].name: 'stun to stick' appears twice among the limits; allowed: each name once; rename one of them",
      "day.shifts[1].name: 'early' appears twice among the shifts; allowed: each name once; rename one of them",
      "day.breaks[1].name: 'first break' appears twice among the breaks; allowed: each name once; rename one of them",
      "line[3].breakdowns[1].name: 'blade' appears twice among the breakdowns of this stage; allowed: each name once; rename one of them",
      "line[1].removals[1].as: 'condemned' appears twice among the removals of this stage; allowed: each name once; rename one of them",
      "supply.loads[1].name: 'lorry 2' appears twice among the loads, counting repeats; allowed: each name once; rename one of them",
    ],
  ],
  [
    "a note on the sources of something that is not there",
    (plan) => (plan.sources[1].path = "line.skining.cycle"),
    [
      "sources[1].path: 'skining' is not a name in 'line'; allowed: 'hanging', 'stunning', 'bleeding', 'skinning', 'chilling'; did you mean 'skinning'?",
    ],
  ],
  [
    "a note on a path that is none",
    (plan) => (plan.sources[1].path = "line..cycle"),
    ['sources[1].path: "line..cycle" is no path; allowed: such as "line.skinning.cycle"; check dots and brackets'],
  ],
  // stations and crews
  [
    "manual work without a crew",
    (plan) => delete plan.line[0].crew,
    ['line[0]: manual work without a crew; allowed: the name of a crew, or "work": "machine"; add the key "crew"'],
  ],
  [
    "both a cycle and a rate",
    (plan) => (plan.line[0].rate = "700 /h"),
    ['line[0]: both a cycle and a rate; allowed: exactly one of "cycle" and "rate"; keep one'],
  ],
  [
    "neither a cycle nor a rate",
    (plan) => delete plan.line[1].rate,
    [
      'line[1]: neither a cycle nor a rate; allowed: exactly one of "cycle" and "rate"; write for example "cycle": "5.5 s"',
    ],
  ],
  [
    "more removed than there is",
    (plan) =>
      (plan.line[1].removals = [
        { as: "condemned", share: "60 %" },
        { as: "trim", share: 0.5 },
      ]),
    ["line[1].removals: the shares add up to more than 100 %; allowed: 100 % or less; lower them"],
  ],
  [
    "heads removed as carcasses",
    (plan) => (plan.line[1].removals[0].as = "carcass"),
    ["line[1].removals[0].as: 'carcass' is the word for heads that go the whole way; allowed: another name; rename it"],
  ],
  [
    "a crew that is never there",
    (plan) => (plan.crews[1].people = { early: 0 }),
    [
      "crews[1].people: 'skinning' never has more than 0, but one position takes 1; allowed: 1 or more in at least one shift; add people",
    ],
  ],
  [
    "a crew too small for one position",
    (plan) => (plan.line[3].peoplePerPosition = 4),
    [
      "crews[1].people: 'skinning' never has more than 3, but one position takes 4; allowed: 4 or more in at least one shift; add people",
    ],
  ],
  // supply
  [
    "loads without live handling",
    (plan) => (plan.liveHandling = null),
    [
      'liveHandling: missing, but the supply comes in loads; allowed: how crates get to the hanging point; add "liveHandling" with "unloading", "lairageCrates" and "feeding"',
    ],
  ],
  [
    "live handling without loads",
    (plan) => (plan.supply = { saturated: { heads: 100 } }),
    [
      "liveHandling: given, but the supply is 'saturated', which has no crates; allowed: nothing, or a supply in \"loads\"; delete it",
    ],
  ],
  [
    "a stage named as a crate step",
    (plan) => (plan.line[4].name = "unloading"),
    ["line[4].name: 'unloading' is the name of a crate step; allowed: another name; rename the stage"],
  ],
  [
    "too many loads and heads, by repeats",
    (plan) =>
      Object.assign(plan.supply.loads[0], {
        crates: 10_000,
        headsPerCrate: 1000,
        repeat: { every: "1 s", times: 2000 },
      }),
    [
      "supply.loads: 2001 loads, counting repeats; allowed: 2000 or less; is there a zero too many?",
      "supply.loads: 20000000600 heads in all loads; allowed: 10000000 or less; is there a zero too many?",
    ],
  ],
  [
    "a lorry that comes next week",
    (plan) => (plan.supply.loads[0].repeat = { every: "1 d", times: 8 }),
    [
      "supply.loads[0].repeat: the last of these lorries is due more than four days later; allowed: before 100:00 on the clock of the day; lower every or times",
    ],
  ],
  // calendar
  [
    "hours before the day starts",
    (plan) => {
      plan.day.start = "05:45";
      plan.day.closing.stopHangingAt = "02:00";
    },
    [
      "supply.loads[0].at: 05:30 is before the day starts; allowed: 05:45 or later; move it, start the day earlier, or write a time of the next day as 24:00 or later",
      "day.closing.stopHangingAt: 02:00 is before the day starts; allowed: 05:45 or later; move it, start the day earlier, or write a time of the next day as 24:00 or later",
    ],
  ],
  [
    "a shift that ends before it begins",
    (plan) => (plan.day.shifts[1].to = "01:30"),
    ['day.shifts[1].to: the shift ends before it has begun; allowed: later than 14:00; for the next day write "25:30"'],
  ],
  [
    "shifts that overlap",
    (plan) => (plan.day.shifts[1].from = "13:00"),
    [
      "day.shifts[1].from: the shift starts before the one above has ended; allowed: 14:00 or later; put shifts in order",
    ],
  ],
  [
    "a break outside the shifts",
    (plan) => (plan.day.breaks[0].at = "05:50"),
    ["day.breaks[0]: the break (05:50 to 06:05) lies outside the shifts; allowed: 06:00 to 25:30; move or shorten it"],
  ],
  [
    "two breaks at once for one crew",
    (plan) => (plan.day.breaks[1].at = "09:10"),
    [
      "day.breaks[1]: crew 'hanging' already pauses in 'first break' at that time; allowed: breaks one after another; move one of them",
    ],
  ],
  [
    "a break for nobody",
    (plan) => Object.assign(plan.day.breaks[1], { crews: [], stages: [] }),
    [
      "day.breaks[1]: no crew and no machine takes this break; allowed: at least one crew or stage; name one, or delete the break",
    ],
  ],
  [
    "a ceiling before the last shift ends",
    (plan) => (plan.day.ceiling = "20 h"),
    [
      "day.ceiling: the day is cut off before its last shift ends; allowed: more than 20.5 h, counted from the start of the day; raise it",
    ],
  ],
  // limits
  [
    "a limit that limits nothing",
    (plan) => delete plan.limits[0].max,
    ['limits[0]: neither a min nor a max; allowed: at least one of them; write for example "max": "10 s"'],
  ],
  [
    "a least time above the most",
    (plan) => (plan.limits[0].min = "11 s"),
    ["limits[0]: min is more than max; allowed: min <= max; put the two in order"],
  ],
  [
    "a limit up the line",
    (plan) => (plan.limits[0].to = "start of stunning"),
    [
      'limits[0].to: "start of stunning" does not come after "end of stunning" on a head\'s way; allowed: a later point than that of from; swap the two, or name a later point',
    ],
  ],
];

describe("readPlan", () => {
  it("finds no fault in the sample plan, which uses every key", () => {
    expect(messages(samplePlan())).toEqual([]);
  });

  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    const plan = samplePlan();
    spoil(plan);
    expect(messages(plan)).toEqual(expected);
  });

  it("tells of five different mistakes in five messages, those of shape first", () => {
    const plan: Loose = samplePlan();
    plan.target = "600";
    plan.line[0].bufer = 3;
    plan.line[3].crew = "skining";
    plan.limits[0].to = "start of hanging";
    plan.day.breaks[0].at = "05:00";
    expect(messages(plan)).toEqual([
      'target: "600" has no unit; allowed: a rate in /d, /h, /min or /s; write for example "620 /h"',
      "line[0].bufer: unknown key; allowed: 'name', 'section', 'travel', 'next', 'offLine', 'leftOut', 'removals', 'diversions', 'takesOff', 'water', 'energyPerHead', 'power', 'capital', 'settings', 'kind', 'work' and 13 more; did you mean 'buffer'?",
      "line[3].crew: 'skining' is not a crew; allowed: 'hanging', 'skinning'; did you mean 'skinning'?",
      "day.breaks[0]: the break (05:00 to 05:15) lies outside the shifts; allowed: 06:00 to 25:30; move or shorten it",
      'limits[0].to: "start of hanging" does not come after "end of stunning" on a head\'s way; allowed: a later point than that of from; swap the two, or name a later point',
    ]);
  });

  it("speaks for the sound parts of a stage whose other parts are wrong", () => {
    const plan: Loose = samplePlan();
    Object.assign(plan.line[0], { cycle: 5, crew: "hangin" });
    expect(messages(plan)).toHaveLength(2);
  });

  it.each([null, [], 5, "plan", undefined])("refuses %j as a whole", (json) => {
    expect(messages(json)).toHaveLength(1);
    expect(messages(json)[0]).toMatch(/^the file as a whole: .*allowed: an object/u);
  });

  it("leaves the JSON as it was", () => {
    const plan = samplePlan();
    readPlan(plan, sampleFiles);
    expect(plan).toEqual(samplePlan());
  });

  it("gives the same plan for the same JSON, sharing nothing", () => {
    const first = readPlan(samplePlan(), sampleFiles).plan;
    const second = readPlan(samplePlan(), sampleFiles).plan;
    expect(first).toEqual(second);
    expect(first?.line[0]).not.toBe(second?.line[0]);
  });
});
