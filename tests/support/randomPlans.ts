import fc from "fast-check";
import type {
  Breakdown,
  ByProduct,
  ChainStation,
  Crew,
  Gate,
  LiveHandling,
  Pace,
  Plan,
  Removal,
  ShareBy,
  Stage,
  Stunned,
  Supply,
} from "../../sim/asked/plan/plan.ts";
import type { Varying } from "../../sim/maths/random/index.ts";
import { chain, constant, crateStep, crew, dwell, exponential, onChain, pause, planOf, station } from "./plans.ts";

/**
 * Random small plans with every feature in use, for property tests. Stage names are s0, s1, ...; the off-line stage is
 * "trim"; crews are c0, c1 and "maintenance"; the vessel is "tank".
 */

const weightKg: Varying = { family: "uniform", min: 1.8, max: 3.2 };

const time: fc.Arbitrary<Varying> = fc.oneof(
  fc.integer({ min: 1, max: 8 }).map(constant),
  fc.integer({ min: 1, max: 6 }).map(exponential),
  fc.constant<Varying>({ family: "lognormal", mean: 4, cv: 0.5 }),
  fc.constant<Varying>({ family: "triangular", min: 1, mode: 2, max: 6 }),
);

const breakdown: fc.Arbitrary<Breakdown> = fc.record({
  name: fc.constantFrom("jam", "blade", "power"),
  clock: fc.constantFrom("running" as const, "calendar" as const),
  scope: fc.constantFrom("position" as const, "station" as const),
  uptimeSeconds: fc.integer({ min: 20, max: 200 }).map(exponential),
  repairSeconds: fc.integer({ min: 1, max: 30 }).map(exponential),
  crew: fc.constantFrom(null, null, "maintenance"),
  headInHand: fc.constant("resume" as const),
});
const breakdowns = fc.uniqueArray(breakdown, { maxLength: 2, selector: (each) => each.name });
const losing = fc.record({ to: fc.constant("trim") });

/** Names stages by their place, since which there are is not known here. */
const sharedBreakdown = fc.record({
  clock: fc.constantFrom("any running" as const, "all running" as const, "calendar" as const),
  uptimeSeconds: fc.integer({ min: 20, max: 200 }).map(exponential),
  repairSeconds: fc.integer({ min: 1, max: 30 }).map(exponential),
  crew: fc.constantFrom(null, null, "maintenance"),
  which: fc.uniqueArray(fc.nat({ max: 11 }), { minLength: 1, maxLength: 4 }),
});

/** Everything with something that runs. */
function stoppable(line: readonly Stage[], crates: readonly string[]): string[] {
  const stages = line.flatMap((stage) => [stage, ...(stage.kind === "chain" ? stage.stations : [])]);
  return [...crates, ...stages.filter((stage) => !("kind" in stage && stage.kind === "dwell")).map(({ name }) => name)];
}

const optionalTravel = fc.option(time, { freq: 2, nil: null });
const damagedBy = fc.record({
  of: fc.constantFrom<ShareBy["of"]>(
    { kind: "live weight" },
    { kind: "time", from: { stage: null, moment: "entry" }, to: { stage: "s0", moment: "start" } },
    { kind: "time", from: { stage: "s0", moment: "end" }, to: { stage: "s0", moment: "exit" } },
  ),
  between: fc.constantFrom("a line" as const, "steps" as const),
});
const removals: fc.Arbitrary<Removal[]> = fc.oneof(
  fc.constant<Removal[]>([]),
  fc.constant<Removal[]>([{ as: "condemned", share: 0.1 }]),
  damagedBy.map(({ of, between }): Removal[] => {
    const [from, to] = of.kind === "time" ? [0, 60] : [2, 3];
    const points = [
      { at: from, share: 0 },
      { at: to, share: 0.3 },
    ];
    return [
      { as: "condemned", share: 0.05 },
      { as: "damaged", share: 0.3, shareBy: { of, between, points } },
    ];
  }),
);
const byProducts: fc.Arbitrary<ByProduct[]> = fc.constantFrom<ByProduct[]>(
  [],
  [{ name: "blood", share: 0.04, of: "live weight", vessel: "tank" }],
  [{ name: "drip", share: 0.02, of: "what is left", vessel: null }],
);
const crews = fc.constantFrom<string[]>([], ["c0"], ["c1"], ["c0", "c1"]);

const pace: fc.Arbitrary<Pace[]> = fc.oneof(
  { weight: 3, arbitrary: fc.constant<Pace[]>([]) },
  fc.uniqueArray(fc.integer({ min: -20, max: 300 }), { minLength: 1, maxLength: 3 }).chain((hours) =>
    fc.tuple(
      ...hours
        .toSorted((a, b) => a - b)
        .map((fromSeconds) =>
          fc.record({
            fromSeconds: fc.constant(fromSeconds),
            speed: fc.constantFrom(1, 0.5, 1.5),
            mostPerSecond: fc.constantFrom(null, null, 0.2),
          }),
        ),
    ),
  ),
);

const workStation = fc
  .record({
    cycle: time,
    pace,
    buffer: fc.constantFrom(0, 0, 1, 3, Infinity),
    positions: fc.integer({ min: 1, max: 3 }),
    crews,
    peoplePerPosition: fc.integer({ min: 1, max: 2 }),
    breakdowns,
    headInHand: fc.oneof({ weight: 3, arbitrary: fc.constant("resume" as const) }, losing),
    travelSeconds: optionalTravel,
    removals,
    diverted: fc.constantFrom(0, 0, 0.1),
    weights: fc.constantFrom(null, null, { fromKg: 2, toKg: 3, else: "trim" }),
    weightFactor: fc.constantFrom(null, { perKg: 0.4, atKg: 2.5 }),
    byProducts,
    section: fc.constantFrom("kill", "dressing"),
  })
  .map(({ cycle, peoplePerPosition, headInHand, diverted, ...rest }) =>
    station("", cycle, {
      ...rest,
      breakdowns: rest.breakdowns.map((each) => ({ ...each, headInHand })),
      diversions: diverted > 0 ? [{ to: "trim", share: diverted }] : [],
      work: rest.crews.length === 0 ? "machine" : "manual",
      peoplePerPosition: rest.crews.length === 0 ? 0 : peoplePerPosition,
    }),
  );

const dwellStage = fc
  .record({
    time,
    places: fc.constantFrom(1, 2, 5, Infinity),
    hooks: fc.boolean(),
    travelSeconds: optionalTravel,
    removals,
    byProducts,
  })
  .map(({ time: dwellTime, places, hooks, ...rest }) =>
    hooks ? dwell("", dwellTime, 8, { ...rest, headsPerHook: 4 }) : dwell("", dwellTime, places, rest),
  );

const windowStation = fc.record({
  cycle: time,
  pace,
  window: fc.integer({ min: 1, max: 4 }),
  gap: fc.integer({ min: 0, max: 2 }),
  ifUnfinished: fc.constantFrom("stop" as const, "pass" as const),
  positions: fc.integer({ min: 1, max: 2 }),
  crews,
  breakdowns,
});

const chainStage = fc
  .record({
    stations: fc.array(windowStation, { maxLength: 2 }),
    tail: fc.integer({ min: 0, max: 3 }),
    secondsPerShackle: fc.integer({ min: 1, max: 6 }),
    pace,
    shackles: fc.constantFrom(null, { count: 4, backSeconds: 30 }),
    travelSeconds: optionalTravel,
  })
  .map(({ stations, tail, secondsPerShackle, ...rest }) => {
    let place = 0;
    const placed: ChainStation[] = stations.map(({ cycle, window, gap, ...each }, index) => {
      const at = place + gap;
      place = at + window;
      return onChain(`w${index}`, at, window, cycle, { ...each, peoplePerPosition: each.crews.length === 0 ? 0 : 1 });
    });
    return chain("", Math.max(1, place + tail), secondsPerShackle, placed, { ...rest, unfinishedTo: "trim" });
  });

/** The first stage is a station; no travel leads onto a chain. */
const line: fc.Arbitrary<Stage[]> = fc
  .tuple(
    workStation,
    fc.array(fc.oneof({ weight: 4, arbitrary: workStation }, dwellStage, chainStage as fc.Arbitrary<Stage>), {
      maxLength: 5,
    }),
  )
  .map(([first, others]) => {
    const named = [first, ...others].map((stage, index): Stage => {
      if (stage.kind !== "chain") return { ...stage, name: `s${index}` };
      return {
        ...stage,
        name: `s${index}`,
        stations: stage.stations.map((each) => ({ ...each, name: `s${index} ${each.name}` })),
      };
    });
    const joined = named.map((stage, index) =>
      named[index + 1]?.kind === "chain" ? { ...stage, travelSeconds: null } : stage,
    );
    const last = station("last", 1, { buffer: Infinity });
    return [...joined, last, station("trim", 3, { offLine: true, next: "last", buffer: Infinity })];
  });

const supply: fc.Arbitrary<Supply> = fc.oneof(
  fc.constant<Supply>({ kind: "saturated", heads: 60, liveWeightKg: weightKg }),
  fc.record({
    kind: fc.constant("stream" as const),
    interarrival: time,
    heads: fc.integer({ min: 1, max: 80 }),
    whenFull: fc.constantFrom("wait" as const, "turn away" as const),
    liveWeightKg: fc.constant(weightKg),
  }),
  fc
    .array(
      fc.record({
        atSeconds: fc.integer({ min: 0, max: 300 }),
        delay: fc.option(time, { nil: null }),
        comesShare: fc.constantFrom(1, 1, 0.6),
        crates: fc.integer({ min: 1, max: 6 }),
        headsPerCrate: fc.integer({ min: 1, max: 5 }),
        deadOnArrivalShare: fc.constantFrom(0, 0.2),
      }),
      { minLength: 1, maxLength: 4 },
    )
    .map(
      (loads): Supply => ({
        kind: "loads",
        loads: loads.map((load, index) => ({ ...load, name: `load ${index}`, liveWeightKg: weightKg })),
      }),
    ),
);

const breaks = fc.array(
  fc.record({ at: fc.integer({ min: 5, max: 300 }), length: fc.integer({ min: 1, max: 60 }), stage: fc.boolean() }),
  { maxLength: 3 },
);

const handling: fc.Arbitrary<LiveHandling> = fc
  .record({
    lairage: fc.integer({ min: 1, max: 5 }),
    cratesAtHanging: fc.integer({ min: 1, max: 2 }),
    perCycle: fc.integer({ min: 1, max: 4 }),
    back: fc.boolean(),
    dirtyPlaces: fc.constantFrom(1, 2, Infinity),
    fleet: fc.boolean(),
  })
  .map(({ lairage, cratesAtHanging, perCycle, back, dirtyPlaces, fleet }) => ({
    way: "lift",
    toHanging: [
      crateStep("unloading", exponential(4), { crews: ["c0"], peoplePerPosition: 1, cratesPerCycle: perCycle }),
      crateStep("crate lift", exponential(4), { places: lairage }),
    ],
    back: back
      ? [
          crateStep("crate washer", 3, { places: dirtyPlaces }),
          crateStep("restacking", exponential(5), { cratesPerCycle: perCycle, crews: ["c1"], peoplePerPosition: 1 }),
        ]
      : [],
    cratesAtHanging,
    fleet: back && fleet ? { crates: 8, awaySeconds: 60 } : null,
  }));

/** How heads that s0 stuns are cared for; where they are stuck is chosen by `nth` among the stations behind it. */
const care = fc.option(
  fc.record({
    nth: fc.nat({ max: 5 }),
    hold: fc.boolean(),
    late: fc.option(
      fc.record({
        afterSeconds: fc.integer({ min: 1, max: 20 }),
        help: fc.constantFrom("stun again" as const, "stick there" as const),
        takesSeconds: fc.integer({ min: 0, max: 9 }),
        crew: fc.constantFrom(null, "c0", "maintenance"),
      }),
      { freq: 3, nil: null },
    ),
  }),
  { freq: 2, nil: null },
);

function stunnedOf(line: Stage[], parts: { nth: number; hold: boolean; late: Stunned["late"] } | null): Stunned | null {
  if (parts === null) return null;
  const places = line
    .filter(({ offLine, name }) => !offLine && name !== "s0")
    .flatMap((stage) => {
      if (stage.kind === "chain") return stage.stations.map(({ name }) => name);
      return stage.kind === "station" ? [stage.name] : [];
    });
  const { nth, hold, late } = parts;
  return { from: "s0", to: places[nth % places.length]!, hold: hold || late === null, late };
}

interface Parts {
  supply: Supply;
  line: Stage[];
  handling: LiveHandling;
  there: { number: number; forSeconds: number } | null;
  heldUntil: number | null;
}

/** Crates in lairage and heads in the first dwell stage that has room for them. */
function startOf({ supply, line, handling, there }: Parts): Pick<Plan, "atStart"> {
  if (there === null) return {};
  const { number, forSeconds } = there;
  const lot = { lot: null, forSeconds, liveWeightKg: weightKg };
  const room = line.find((stage) => stage.kind === "dwell" && stage.places >= number);
  const lairage = handling.toHanging.at(-1)!.places;
  const holds = Math.min(number, lairage, handling.fleet?.crates ?? Infinity);
  return {
    atStart: {
      crates: supply.kind === "loads" ? [{ ...lot, crates: holds, headsPerCrate: 3 }] : [],
      carcasses: room === undefined ? [] : [{ ...lot, in: room.name, heads: number, leftShare: 0.9 }],
    },
  };
}

/** The first load's heads are held in the first dwell stage. */
function heldIn({ line, heldUntil }: Parts, supply: Supply): Supply {
  const room = line.find((stage) => stage.kind === "dwell");
  if (supply.kind !== "loads" || heldUntil === null || room === undefined) return supply;
  const held = { in: room.name, untilSeconds: heldUntil };
  return { ...supply, loads: supply.loads.map((load, index) => (index === 0 ? { ...load, held } : load)) };
}

/** One person, who may be missing where somebody of another crew steps in. */
function maintenance(isCovered: boolean): Crew {
  const by = [
    { crew: "c1", keeps: 2 },
    { crew: "c0", keeps: 1 },
  ];
  return isCovered ? crew("maintenance", 1, { absentShare: 0.4, cover: { by, atLeast: [1] } }) : crew("maintenance", 1);
}

/** Crews of two to four people, so that every station can be served unless somebody is absent. */
export const randomPlan: fc.Arbitrary<Plan> = fc
  .record({
    supply,
    line,
    breaks,
    handling,
    people: fc.integer({ min: 2, max: 4 }),
    rule: fc.constantFrom("furthest downstream" as const, "longest queue" as const, "fixed order" as const),
    walkSeconds: fc.constantFrom(0, 2),
    absentShare: fc.constantFrom(0, 0, 0.1),
    covered: fc.boolean(),
    there: fc.option(
      fc.record({ number: fc.integer({ min: 1, max: 4 }), forSeconds: fc.integer({ min: 0, max: 20 }) }),
      {
        freq: 2,
        nil: null,
      },
    ),
    heldUntil: fc.option(fc.integer({ min: 1, max: 400 }), { freq: 2, nil: null }),
    closing: fc.option(fc.integer({ min: 0, max: 500 }), { freq: 3, nil: null }),
    gate: fc.option(fc.integer({ min: 1, max: 3 }), { nil: null }),
    safe: fc.boolean(),
    spill: fc.boolean(),
    care,
    shared: fc.array(sharedBreakdown, { maxLength: 2 }),
  })
  .map((parts) => {
    const people = { rule: parts.rule, walkSeconds: parts.walkSeconds, absentShare: parts.absentShare };
    const gates: Gate[] =
      parts.gate === null
        ? []
        : [{ name: "gate", from: "s0", to: { stage: "last", moment: "start" }, atMost: parts.gate }];
    const plan = planOf(heldIn(parts, parts.supply), parts.line, {
      crews: [crew("c0", parts.people, people), crew("c1", 2, people), maintenance(parts.covered)],
      gates,
      stunned: stunnedOf(parts.line, parts.care),
      vessels: [
        {
          name: "tank",
          capacityKg: 1,
          emptyAtKg: 0.8,
          emptyingSeconds: 15,
          crew: "maintenance",
          whenFull: parts.spill ? "spill" : "stop",
        },
      ],
      liveHandling: parts.supply.kind === "loads" ? parts.handling : null,
      ...startOf(parts),
    });
    const crates = [...(plan.liveHandling?.toHanging ?? []), ...(plan.liveHandling?.back ?? [])].map(
      ({ name }) => name,
    );
    const names = stoppable(parts.line, crates);
    return {
      ...plan,
      sharedBreakdowns: parts.shared.map(({ which, ...each }, index) => ({
        ...each,
        name: `shared ${index}`,
        stops: [...new Set(which.map((at) => names[at % names.length]!))],
      })),
      day: {
        ...plan.day,
        ceilingSeconds: 8_000,
        safeStop: parts.safe ? { from: "s0", to: "last" } : null,
        closing: parts.closing === null ? { rule: "finish" } : { rule: "stop hanging", atSeconds: parts.closing },
        breaks: parts.breaks.map(({ at, length, stage }, index) =>
          pause(`break ${index}`, at, length, stage ? { stages: [parts.line[1]!.name] } : { crews: ["c0", "c1"] }),
        ),
      },
    };
  });
