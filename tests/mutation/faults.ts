/** A deliberate fault: one or more exact replacements in the sources, and the checks that should notice it. */
export interface Fault {
  name: string;
  edits: { file: string; find: string; replace: string }[];
  /** Test files under tests/outside, quickest first; the first that fails has caught it. */
  checks: string[];
}

const FLOW = "sim/engine/flow.ts";
const ONE_BY_ONE = ["recursion", "littlesLaw"];

export const FAULTS: Fault[] = [
  {
    name: "blocking before service: a head starts only when the next stage has a place",
    edits: [
      {
        file: FLOW,
        find: "  return day.pauses[stage] === 0 && !isHeld(day, stage);\n",
        replace: `  if (day.pauses[stage]! > 0 || isHeld(day, stage)) return false;
  const after = day.line.stages.next[stage]!;
  return after < 0 || day.occupancy[after]! < day.line.stages.places[after]!;
`,
      },
      {
        file: FLOW,
        find: "  if (kind !== DWELL && kind !== CHAIN) startWaiting(day, stage);\n  admit(day, stage);\n",
        replace: `  if (kind !== DWELL && kind !== CHAIN) startWaiting(day, stage);
  admit(day, stage);
  if (stage > 0) refill(day, stage - 1);
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
        find: "  const travel = day.travel[stage];\n",
        replace: `  if (isHeadStage(day, stage) && day.pool.number[item]! % 97 === 96) {
    day.occupancy[to]!--;
    return;
  }
  const travel = day.travel[stage];
`,
      },
    ],
    checks: [...ONE_BY_ONE, "saturatedLines"],
  },
  {
    name: "a head is counted out twice, one in 500",
    edits: [
      {
        file: "sim/engine/leaveLine.ts",
        find: "  day.out[destination]!++;\n",
        replace: "  day.out[destination]! += day.pool.number[item]! % 500 === 499 ? 2 : 1;\n",
      },
    ],
    checks: ["nonExponentialLines", "saturatedLines", "unreliableLines"],
  },
  {
    name: "biased draws: the uniform is multiplied by 0.98",
    edits: [
      {
        file: "sim/random/sampler.ts",
        find: "this.quantile(this.uniforms.next())",
        replace: "this.quantile(0.98 * this.uniforms.next())",
      },
      {
        file: "sim/random/sampler.ts",
        find: "this.quantile(values[at]!)",
        replace: "this.quantile(0.98 * values[at]!)",
      },
    ],
    checks: ["distributions", "nonExponentialLines"],
  },
  {
    name: "two stages share one stream of draws",
    edits: [
      {
        file: "sim/random/uniformStream.ts",
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
        file: "sim/engine/fifos.ts",
        find: `    this.pool.next[item] = NONE;
    if (this.length[list] === 0) this.first[list] = item;
    else this.pool.next[this.last[list]!] = item;
    this.last[list] = item;
`,
        replace: `    this.pool.next[item] = this.length[list] === 0 ? NONE : this.first[list]!;
    if (this.length[list] === 0) this.last[list] = item;
    this.first[list] = item;
`,
      },
    ],
    checks: [...ONE_BY_ONE, "queues"],
  },
  {
    name: "calendar breakdowns run on working time",
    edits: [
      {
        file: "sim/line/compileStages.ts",
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
        file: "sim/line/compileStages.ts",
        find: 'breakdown.clock === "running" && breakdown.scope === "position"',
        replace: 'breakdown.clock === "never" && breakdown.scope === "position"',
      },
      {
        file: "sim/line/compileFailures.ts",
        find: 'unit.breakdown.clock === "running" ? 1 : 0',
        replace: "0",
      },
      {
        file: "sim/line/compileFailures.ts",
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
        find: "  day.remaining[position]! -= day.now - day.runStart[position]!;\n",
        replace: "",
      },
    ],
    checks: ["breakdownClocks", "unreliableLines"],
  },
  {
    name: "uptime is not spent while the position works",
    edits: [
      {
        file: "sim/engine/uptime.ts",
        find: "unit === failing ? 0 : Math.max(0, day.uptimeLeft[unit]! - worked)",
        replace: "unit === failing ? 0 : Math.max(0, day.uptimeLeft[unit]! - 0 * worked)",
      },
    ],
    checks: ["breakdownClocks", "unreliableLines"],
  },
  {
    name: "one place too many in every buffer",
    edits: [
      {
        file: "sim/line/compileStages.ts",
        find: "return bufferOf(step) + (",
        replace: "return bufferOf(step) + 1 + (",
      },
    ],
    checks: [...ONE_BY_ONE, "saturatedLines"],
  },
  {
    name: "one place missing in every buffer",
    edits: [
      {
        file: "sim/line/compileStages.ts",
        find: "return bufferOf(step) + (",
        replace: "return Math.max(0, bufferOf(step) - 1) + (",
      },
    ],
    checks: [...ONE_BY_ONE, "saturatedLines"],
  },
  {
    name: "a full first stage turns heads away one head late",
    edits: [
      {
        file: "sim/engine/arrivals.ts",
        find: "day.occupancy[stages.hanging]! >= stages.places[stages.hanging]!",
        replace: "day.occupancy[stages.hanging]! > stages.places[stages.hanging]!",
      },
    ],
    checks: ["parallelQueues"],
  },
  {
    name: "leaving a stage is stamped one millisecond late",
    edits: [
      {
        file: "sim/engine/watchLimits.ts",
        find: "heads?.pass(day.pool.number[item]!, stage, moment, day.now)",
        replace: "heads?.pass(day.pool.number[item]!, stage, moment, day.now + (moment === EXIT ? 1e-3 : 0))",
      },
    ],
    checks: ONE_BY_ONE,
  },
  {
    name: "the queue's integral takes the new length for the time before",
    edits: [
      {
        file: "sim/engine/accounting.ts",
        find: "  bookQueue(day, stage);\n  day.queueShown[stage] = length;\n",
        replace: "  day.queueShown[stage] = length;\n  bookQueue(day, stage);\n",
      },
    ],
    checks: ["littlesLaw", "queues"],
  },
  {
    name: "a section's heads are booked one event late",
    edits: [
      {
        file: "sim/engine/accounting.ts",
        find: "  bookSection(day, section);\n  const heads = day.sectionHeads[section]! + change;\n  day.sectionHeads[section] = heads;\n",
        replace:
          "  const heads = day.sectionHeads[section]! + change;\n  day.sectionHeads[section] = heads;\n  bookSection(day, section);\n",
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
        find: "const arrival = Math.max(day.lastArrival[stage]!, free);",
        replace: "const arrival = free;",
      },
    ],
    checks: ONE_BY_ONE,
  },
  {
    name: "a break starts five seconds late",
    edits: [
      {
        file: "sim/line/compileCalendar.ts",
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
        file: "sim/engine/people.ts",
        find: "  day.busyPeople[crew]! -= people;\n",
        replace: "  day.busyPeople[crew]! = Math.max(day.busyPeople[crew]! - people, 1);\n",
      },
    ],
    checks: ["crews"],
  },
  {
    name: "work begins with one person too few",
    edits: [
      {
        file: "sim/engine/people.ts",
        find: "freePeople(day, crew[row]!) >= people[stage]!",
        replace: "freePeople(day, crew[row]!) + 1 >= people[stage]!",
      },
    ],
    checks: ["crews"],
  },
  {
    name: "one repair more at a time than there are fitters",
    edits: [
      {
        file: "sim/engine/jobs.ts",
        find: "freePeople(day, crew) >= 1",
        replace: "freePeople(day, crew) >= 0",
      },
    ],
    checks: ["parallelQueues"],
  },
  {
    name: "a chain does not wait for a station that has not finished",
    edits: [
      {
        file: "sim/line/compileChains.ts",
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
        find: "day.pool.ready[item] = day.now + dwellOf(day, stage, item);",
        replace: "day.pool.ready[item] = day.now + 0.99 * dwellOf(day, stage, item);",
      },
    ],
    checks: [...ONE_BY_ONE, "parallelQueues"],
  },
  {
    name: "the warm-up is cut off, but its time is not",
    edits: [
      {
        file: "sim/engine/accounting.ts",
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
        file: "sim/statistics/estimate.ts",
        find: "studentQuantile((1 + confidence) / 2, n - 1)",
        replace: "studentQuantile((1 + confidence) / 2, n)",
      },
    ],
    checks: ["statistics"],
  },
];
