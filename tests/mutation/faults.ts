/** A deliberate fault: one or more exact replacements in the sources, and the checks that should notice it. */
export interface Fault {
  name: string;
  edits: { file: string; find: string; replace: string }[];
  /**
   * Test files under tests/outside, quickest first; the first that fails has caught it. Where no check against the outside
   * world knows the rule, one of the engine's own by hand: a path under tests.
   */
  checks: string[];
}

const FLOW = "sim/day/engine/flow.ts";
const ONE_BY_ONE = ["recursion", "littlesLaw"];

export const FAULTS: Fault[] = [
  {
    name: "blocking before service: a head starts only when the next stage has a place",
    edits: [
      {
        file: FLOW,
        find: "  return stage.pauses === 0 && !isHeld(day, stage);\n",
        replace: `  if (stage.pauses > 0 || isHeld(day, stage)) return false;
  const after = day.stageAt[stage.next];
  return after === undefined || after.occupancy < after.places;
`,
      },
      {
        file: FLOW,
        find: "  if (stage.kind !== DWELL && stage.kind !== CHAIN) startWaiting(day, stage);\n  admit(day, stage);\n",
        replace: `  if (stage.kind !== DWELL && stage.kind !== CHAIN) startWaiting(day, stage);
  admit(day, stage);
  if (stage.index > 0) refill(day, day.stageAt[stage.index - 1]!);
`,
      },
    ],
    checks: [...ONE_BY_ONE, "saturatedLines"],
  },
  {
    name: "a head is lost between two stages, one in 97",
    edits: [
      {
        file: FLOW,
        find: "  if (stage.travel === null) arrive(day, to, item);\n",
        replace: `  if (stage.takesHeads && item.number % 97 === 96) {
    day.stageAt[to]!.occupancy--;
    return;
  }
  if (stage.travel === null) arrive(day, to, item);
`,
      },
    ],
    checks: [...ONE_BY_ONE, "saturatedLines"],
  },
  {
    name: "a head is counted out twice, one in 500",
    edits: [
      {
        file: "sim/day/engine/leaveLine.ts",
        find: "  day.out[destination]!++;\n",
        replace: "  day.out[destination]! += item.number % 500 === 499 ? 2 : 1;\n",
      },
    ],
    checks: ["nonExponentialLines", "saturatedLines", "unreliableLines"],
  },
  {
    name: "biased draws: the uniform is multiplied by 0.98",
    edits: [
      {
        file: "sim/maths/random/sampler.ts",
        find: "this.quantile(this.uniforms.next())",
        replace: "this.quantile(0.98 * this.uniforms.next())",
      },
      {
        file: "sim/maths/random/aleaStream.ts",
        find: "quantiles.quantile(mirrored ? 1 - u : u)",
        replace: "quantiles.quantile(0.98 * (mirrored ? 1 - u : u))",
      },
    ],
    checks: ["distributions", "nonExponentialLines"],
  },
  {
    name: "two stages share one stream of draws",
    edits: [
      {
        file: "sim/maths/random/uniformStream.ts",
        find: "[seed, replication, owner, purpose]",
        replace: "[seed, replication, purpose]",
      },
    ],
    checks: ["distributions", "nonExponentialLines"],
  },
  {
    name: "last in, first out",
    edits: [
      {
        file: "sim/day/engine/state/fifo.ts",
        find: `    item.next = null;
    if (this.length === 0) this.first = item;
    else this.last!.next = item;
    this.last = item;
`,
        replace: `    item.next = this.length === 0 ? null : this.first;
    if (this.length === 0) this.last = item;
    this.first = item;
`,
      },
    ],
    checks: [...ONE_BY_ONE, "queues"],
  },
  {
    name: "calendar breakdowns run on working time",
    edits: [
      {
        file: "sim/day/line/compileStages.ts",
        find: 'breakdown.clock === "running" && breakdown.scope === "position"',
        replace: 'breakdown.scope === "position"',
      },
    ],
    checks: ["breakdownClocks"],
  },
  {
    name: "breakdowns on working time run by the calendar",
    edits: [
      {
        file: "sim/day/line/compileStages.ts",
        find: 'breakdown.clock === "running" && breakdown.scope === "position"',
        replace: 'breakdown.clock === "never" && breakdown.scope === "position"',
      },
      {
        file: "sim/day/line/compileBreakdowns.ts",
        find: 'clock === "calendar" ? 0 : 1',
        replace: "0",
      },
      {
        file: "sim/day/line/compileBreakdowns.ts",
        find: 'unit.breakdown.clock === "running" && !isOwn(unit.breakdown)',
        replace: 'unit.breakdown.clock === "never" && !isOwn(unit.breakdown)',
      },
    ],
    checks: ["breakdownClocks", "unreliableLines"],
  },
  {
    name: "a repair forgets how much of the work was done",
    edits: [
      {
        file: FLOW,
        find: "  position.remaining -= day.now - position.runStart;\n",
        replace: "",
      },
    ],
    checks: ["breakdownClocks", "unreliableLines"],
  },
  {
    name: "uptime is not spent while the position works",
    edits: [
      {
        file: "sim/day/engine/uptime.ts",
        find: "breakdown === striking ? 0 : Math.max(0, breakdown.uptimeLeft - worked)",
        replace: "breakdown === striking ? 0 : Math.max(0, breakdown.uptimeLeft - 0 * worked)",
      },
    ],
    checks: ["breakdownClocks", "unreliableLines"],
  },
  {
    name: "one place too many in every buffer",
    edits: [
      {
        file: "sim/day/line/compileStages.ts",
        find: "limited(bufferOf(step))",
        replace: "limited(bufferOf(step) + 1)",
      },
    ],
    checks: [...ONE_BY_ONE, "saturatedLines"],
  },
  {
    name: "one place missing in every buffer",
    edits: [
      {
        file: "sim/day/line/compileStages.ts",
        find: "limited(bufferOf(step))",
        replace: "limited(Math.max(0, bufferOf(step) - 1))",
      },
    ],
    checks: [...ONE_BY_ONE, "saturatedLines"],
  },
  {
    name: "a full first stage turns heads away one head late",
    edits: [
      {
        file: "sim/day/engine/arrivals.ts",
        find: "hanging.occupancy >= hanging.places",
        replace: "hanging.occupancy > hanging.places",
      },
    ],
    checks: ["parallelQueues"],
  },
  {
    name: "leaving a stage is stamped one millisecond late",
    edits: [
      {
        file: "sim/day/engine/watchLimits.ts",
        find: "heads?.pass(item.number, stage, moment, day.now)",
        replace: "heads?.pass(item.number, stage, moment, day.now + (moment === EXIT ? 1e-3 : 0))",
      },
    ],
    checks: ONE_BY_ONE,
  },
  {
    name: "the queue's integral takes the new length for the time before",
    edits: [
      {
        file: "sim/day/engine/accounting.ts",
        find: "  stage.shown.set(length, day.now);\n",
        replace: "  stage.shown.heads = length;\n  stage.shown.set(length, day.now);\n",
      },
    ],
    checks: ["littlesLaw", "queues"],
  },
  {
    name: "a section's heads are booked one event late",
    edits: [
      {
        file: "sim/day/engine/accounting.ts",
        find: "  inside.set(inside.heads + change, day.now);\n",
        replace: "  inside.heads += change;\n  inside.set(inside.heads, day.now);\n",
      },
    ],
    checks: ["littlesLaw", "queues"],
  },
  {
    name: "blocked time is booked as starved",
    edits: [
      {
        file: FLOW,
        find: "setState(day, position, BLOCKED)",
        replace: "setState(day, position, STARVED)",
      },
    ],
    checks: ["saturatedLines"],
  },
  {
    name: "removals take 5 % more than their share",
    edits: [
      {
        file: FLOW,
        find: "if (u < branchShare[row]!)",
        replace: "if (u < 1.05 * branchShare[row]!)",
      },
    ],
    checks: ["removals"],
  },
  {
    name: "travel lets a head overtake",
    edits: [
      {
        file: FLOW,
        find: "const arrival = Math.max(stage.lastArrival, free);",
        replace: "const arrival = free;",
      },
    ],
    checks: ONE_BY_ONE,
  },
  {
    name: "a break starts five seconds late",
    edits: [
      {
        file: "sim/day/line/compileCalendar.ts",
        find: "seconds: pause.atSeconds + later",
        replace: "seconds: pause.atSeconds + later + 5",
      },
    ],
    checks: ["crews"],
  },
  {
    name: "a person is not released when the crew has more than one",
    edits: [
      {
        file: "sim/day/engine/people.ts",
        find: "  crew.busy -= people;\n",
        replace: "  crew.busy = Math.max(crew.busy - people, 1);\n",
      },
    ],
    checks: ["crews"],
  },
  {
    name: "work begins with one person too few",
    edits: [
      {
        file: "sim/day/engine/people.ts",
        find: "freePeople(crews[row]!) >= people",
        replace: "freePeople(crews[row]!) + 1 >= people",
      },
    ],
    checks: ["crews"],
  },
  {
    name: "one repair more at a time than there are fitters",
    edits: [
      {
        file: "sim/day/engine/jobs.ts",
        find: "freePeople(crew) >= 1",
        replace: "freePeople(crew) >= 0",
      },
    ],
    checks: ["parallelQueues"],
  },
  {
    name: "a chain does not wait for a station that has not finished",
    edits: [
      {
        file: "sim/day/line/compileLine.ts",
        find: '(onChain(step)?.ifUnfinished === "stop" ? 1 : 0)',
        replace: "(onChain(step)?.ifUnfinished === undefined ? 0 : 0)",
      },
    ],
    checks: ["saturatedLines"],
  },
  {
    name: "dwelling ends one per cent early",
    edits: [
      {
        file: FLOW,
        find: "item.ready = day.now + dwellOf(stage, item);",
        replace: "item.ready = day.now + 0.99 * dwellOf(stage, item);",
      },
    ],
    checks: [...ONE_BY_ONE, "parallelQueues"],
  },
  {
    name: "a dwell ends when its head comes to the front of the queue",
    edits: [
      {
        file: FLOW,
        find: "endHold(stage, item);\n  passPoint(day, item, stage, END);\n",
        replace: "endHold(stage, item);\n",
      },
      {
        file: FLOW,
        find: "  position.item = nextOut(position.stage);\n",
        replace: `  position.item = nextOut(position.stage);
  passPoint(day, position.item!, position.stage, END);
`,
      },
    ],
    checks: ONE_BY_ONE,
  },
  {
    name: "an idle person goes where a head turns up first",
    edits: [
      { file: FLOW, find: "import { claimHands, ", replace: "import { claimHands, crewFor, " },
      {
        file: FLOW,
        find: "  if (stage.people > 0) {\n",
        replace: `  if (stage.people > 0) {
    const crew = crewFor(stage);
    if (crew !== null && stage.idle > 0 && hasWork(day, stage) && isOpen(day, stage)) startNext(day, stage, crew);
`,
      },
    ],
    checks: ["crews"],
  },
  {
    name: "every idle position lacks a crew when a head waits",
    edits: [
      {
        file: FLOW,
        find: "hasTask ? Math.min(stage.idle, wantedPositions(day, stage)) : stage.idle",
        replace: "stage.idle",
      },
    ],
    checks: ["crews"],
  },
  {
    name: "who leaves late for a break comes back before its length is over",
    edits: [
      {
        file: "sim/day/engine/breaks.ts",
        find: "  bringBack(day, crew, people, back);\n",
        replace: "  bringBack(day, crew, people, day.now + 0.5 * (back - day.now));\n",
      },
    ],
    checks: ["crews"],
  },
  {
    name: "a shared breakdown's clock begins anew whenever one of its stages begins",
    edits: [
      {
        file: "sim/day/engine/uptime.ts",
        find: "    if (++breakdown.runningStages !== breakdown.runningLeast) continue;\n",
        replace: "    if (++breakdown.runningStages < breakdown.runningLeast) continue;\n",
      },
    ],
    checks: ["sim/day/engine/sharedBreakdowns"],
  },
  {
    name: "the hold before stunning takes heads at sticking for done",
    edits: [
      {
        file: "sim/day/engine/stunned/secondsUntilClear.ts",
        find: "    else ends.insert(endOf(day, care, position));\n",
        replace: "    else ends.insert(Math.min(day.now, endOf(day, care, position)));\n",
      },
    ],
    checks: ["sim/day/engine/stunned/hold"],
  },
  {
    name: "a slower hour makes the work quicker",
    edits: [
      {
        file: "sim/day/engine/state/pace.ts",
        find: "asWritten / speed[row]!",
        replace: "asWritten * speed[row]!",
      },
    ],
    checks: ["sim/day/engine/paces"],
  },
  {
    name: "the warm-up is cut off, but its time is not",
    edits: [
      {
        file: "sim/day/engine/accounting.ts",
        find: "  day.watchedFrom = day.now;\n",
        replace: "  day.watchedFrom = Math.min(day.now, 1e-9);\n",
      },
    ],
    checks: ["nonExponentialLines", "saturatedLines"],
  },
  {
    name: "Student's t has one degree of freedom too many",
    edits: [
      {
        file: "sim/maths/statistics/estimate.ts",
        find: "studentQuantile((1 + confidence) / 2, n - 1)",
        replace: "studentQuantile((1 + confidence) / 2, n)",
      },
    ],
    checks: ["statistics"],
  },
];
