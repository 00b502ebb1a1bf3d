import { expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/index.ts";
import { type KnownResponse, PLAIN_PROCEDURE, readStudy } from "../../../../sim/asked/study/index.ts";
import { sampleFiles, samplePlan } from "../plan/samplePlan.ts";

const KNOWN: KnownResponse[] = [
  { key: "headsPerHour", format: "number", better: "more" },
  { key: "finish", format: "clock", better: "less" },
  { key: "wait", format: "duration", better: "less" },
  { key: "beyond", format: "share", better: null },
];
const DESIGN = { list: [{ name: "a", set: { "line.skinning.buffer": 3 } }] };
const read = (more: Record<string, unknown>) =>
  readStudy({ name: "s", plan: samplePlan(), design: DESIGN, ...more }, sampleFiles, { knownResponses: () => KNOWN });
const told = (more: Record<string, unknown>) => read(more).faults.map(formatFault);
const until = (more: Record<string, unknown>) => ({
  replications: { until: { response: "headsPerHour", halfWidth: "1 %", ...more } },
});

it("a study that says nothing runs twenty days and compares family-wise", () => {
  expect(read({}).study).toMatchObject({ replications: 20, procedure: PLAIN_PROCEDURE });
});

it("a stopping rule becomes part of the procedure, its ceiling the number of replications", () => {
  const { study } = read(until({ of: "difference" }));
  expect(study).toMatchObject({
    replications: 200,
    procedure: {
      stopping: {
        ...{ response: "headsPerHour", halfWidth: { kind: "relative", value: 0.01 }, of: "difference" },
        ...{ atLeast: 10, atMost: 200 },
      },
      selection: null,
    },
  });
  const timed = read(until({ response: "finish", halfWidth: "2 min", atMost: 50 })).study;
  expect(timed!.procedure.stopping).toMatchObject({
    halfWidth: { kind: "absolute", value: 120 },
    of: "mean",
    atMost: 50,
  });
});

it("a selection becomes part of the procedure", () => {
  const { study } = read({ selection: { response: "beyond", difference: "0.5 %", better: "less", probability: 0.9 } });
  expect(study).toMatchObject({
    replications: 1000,
    procedure: {
      selection: {
        ...{ response: "beyond", better: "less", difference: 0.005, probability: 0.9, firstStage: 20, atMost: 1000 },
      },
    },
  });
  expect(read({ selection: { response: "wait", difference: "30 s" } }).study!.procedure.selection).toMatchObject({
    ...{ better: null, difference: 30 },
  });
});

it("controls and antithetic pairs become part of the procedure", () => {
  const controls = [
    { response: "headsPerHour", mean: 720 },
    { response: "finish", mean: "9 h" },
  ];
  expect(read({ antithetic: true, controls, errorRate: "false discovery" }).study!.procedure).toEqual({
    ...PLAIN_PROCEDURE,
    antithetic: true,
    errorRate: "false discovery",
    controls: [
      { response: "headsPerHour", mean: 720 },
      { response: "finish", mean: 32400 },
    ],
  });
});

it.each([
  [
    until({ response: "headPerHour" }),
    "replications.until.response: 'headPerHour' is not a result; did you mean 'headsPerHour'? gambrel check --responses PLAN lists all that there are",
  ],
  [
    until({ halfWidth: "2 min" }),
    "replications.until.halfWidth: \"2 min\" does not suit 'headsPerHour'; allowed: a number in the response's own unit; write for example 5",
  ],
  [
    until({ response: "wait", halfWidth: 30 }),
    "replications.until.halfWidth: 30 is no time, and 'wait' is one; allowed: a time; write for example \"2 min\"",
  ],
  [
    until({ response: "finish" }),
    'replications.until.halfWidth: "1 %" of a time of day has no meaning; allowed: a time; write for example "2 min"',
  ],
  [
    until({ halfWidth: 0 }),
    'replications.until.halfWidth: 0 is too small; allowed: more than 0; write for example "1 %"',
  ],
  [
    until({ halfWidth: "wide" }),
    'replications.until.halfWidth: "wide" cannot be read here; allowed: a number in the response\'s own unit, a time for a response that is a time, or a percentage; write for example "1 %"',
  ],
  [
    until({ atLeast: 30, atMost: 20 }),
    "replications.until.atLeast: 30, more than atMost, which is 20; allowed: 20 or less",
  ],
  [{ replications: {} }, "replications.until: missing; allowed: an object { }"],
  [{ replications: "20" }, 'replications: "20" is of the wrong kind; allowed: a number or an object { }'],
  [
    { antithetic: true, replications: 5 },
    "replications: 5 days; allowed: an even number from 2 on, because antithetic days come in pairs",
  ],
  [
    { antithetic: true, ...until({ atLeast: 2 }) },
    "replications.until.atLeast: 2 days; allowed: an even number from 4 on, because antithetic days come in pairs",
  ],
  [
    { antithetic: true, selection: { response: "wait", difference: "9 s", atMost: 99 } },
    "selection.atMost: 99 days; allowed: an even number from 4 on, because antithetic days come in pairs",
  ],
  [
    { selection: { response: "wait", difference: "9 s" }, replications: 20 },
    'replications: the selection already decides how many days are run; allowed: one of the two; delete it, or delete "selection"',
  ],
  [
    { selection: { response: "wait", difference: "9 s" }, design: undefined },
    "selection: the base is the only variant, so there is nothing to pick; allowed: a selection with a design; add a design",
  ],
  [
    { selection: { response: "wait", difference: "9 s", firstStage: 60, atMost: 50 } },
    "selection.firstStage: 60, more than atMost, which is 50; allowed: 50 or less",
  ],
  [
    { selection: { response: "beyond", difference: 0.01 } },
    'selection: more of \'beyond\' is neither better nor worse by itself; write "better": "more" or "better": "less"',
  ],
  [
    { selection: { response: "headsPerHour", difference: "1 %" } },
    "selection.difference: \"1 %\" does not suit 'headsPerHour'; allowed: a number in the response's own unit; write for example 5",
  ],
  [
    { controls: [{ response: "x", mean: 1 }] },
    "controls[0].response: 'x' is not a result; gambrel check --responses PLAN lists all that there are",
  ],
  [
    { controls: [{ response: "finish", mean: 5 }] },
    "controls[0].mean: 5 is no time, and 'finish' is one; allowed: a time; write for example \"2 min\"",
  ],
  [
    { controls: [1, 2].map((mean) => ({ response: "headsPerHour", mean })) },
    "controls[1].response: 'headsPerHour' appears twice among the controls; allowed: each name once; rename or delete one of them",
  ],
  [
    { errorRate: "holm" },
    "errorRate: \"holm\" is not one of the choices; allowed: 'family-wise', 'false discovery', 'per comparison'; write one of these",
  ],
] as [Record<string, unknown>, string][])("a study with %j is told", (more, message) => {
  expect(told(more)).toEqual([message]);
});

it("a design's own numbers are checked", () => {
  const factors = [{ name: "a", path: "line.skinning.buffer", from: 1, to: 9 }];
  expect(told({ design: { screening: { factors, levels: 3 } } })).toEqual([
    "design.screening.levels: 3 levels; allowed: an even number",
  ]);
  const many = Array.from({ length: 50 }, (_, index) => ({
    ...factors[0],
    name: `f${index}`,
    path: `line.s${index}.buffer`,
  }));
  expect(told({ design: { screening: { factors: many, trajectories: 200 } } })).toEqual([
    "design.screening: up to 10200 variants; allowed: 10000 or less; remove trajectories or factors",
  ]);
  expect(told({ design: { list: [{ name: "a" }, { name: "b", insert: [], remove: [] }] } })).toEqual(
    ["[0]", "[1]"].map(
      (at) =>
        `design.list${at}: it changes nothing; allowed: plan, set, insert or remove; write for example "set": { "line.skinning.buffer": 12 }`,
    ),
  );
  const insert = [{ element: {} }, { before: "line.a", after: "line.b", element: {} }, { before: "line.a" }];
  expect(told({ design: { list: [{ name: "a", insert }] } })).toEqual([
    "design.list[0].insert[0]: no place is named; allowed: exactly one of before, after; keep one",
    "design.list[0].insert[1]: both sides; allowed: exactly one of before, after; keep one",
    'design.list[0].insert[2].element: missing; allowed: what is put in; write for example "element": { "kind": "station", "name": "scalding", "rate": "600 /h" }',
  ]);
  const levels = [{ name: "a", path: "line.skinning.buffer", levels: [1, 2] }];
  expect(told({ baseName: "a 1", design: { oneAtATime: { factors: levels } } })).toEqual([
    "design: 'a 1' appears twice among the variants, the base included; allowed: each name once; rename or delete one of them",
  ]);
});
