/**
 * The other questions on one small plant: who works where (improve), which offer is worth its price (options), what
 * distribution measured times have (fit), whether the plan's days are like observed ones (calibrate). All invented.
 * Run: npx tsx experiments/examples/askTheRest.ts
 */
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import {
  calibrate,
  compareOffers,
  type Fault,
  fitColumn,
  formatFault,
  improve,
  improvementStudy,
  planFragment,
  readImprove,
  readObserved,
  readOptions,
  readPlan,
  readTimes,
  runStudy,
  simulateWith,
} from "gambrel";
import { renderReport } from "gambrel/charts";

const made = { gambrel: "example", command: "npx tsx experiments/examples/askTheRest.ts" };
const parts = resolve(import.meta.dirname, "../plans/parts");
const files = { readText: (name: string) => readFileSync(resolve(parts, name), "utf8") };

/** Every reader gives what it read, or null and all faults at once. */
function sound<Thing>(thing: Thing | null, faults: readonly Fault[]): Thing {
  if (thing === null) throw new Error(faults.map(formatFault).join("\n"));
  return thing;
}

const sharing = readImprove(
  {
    name: "Three or four people on the line",
    plan: "crews.json",
    goal: "throughput",
    allocate: {
      people: {
        total: 5,
        least: 4,
        among: [
          { crew: "line", from: 2, to: 4 },
          { crew: "relief", from: 1, to: 2 },
        ],
      },
    },
    firstStage: 5,
    atMost: 10,
    search: { days: 2, designs: 4, finalists: 2, curve: 0 },
  },
  files,
);
const question = sound(sharing.question, sharing.faults);
const found = await improve(question, { simulate: simulateWith(made) });
console.log(found.improvement.words[0]);
const page = renderReport(await runStudy(improvementStudy(question, found), made), { improvement: found.improvement });
console.log(`Its report: ${Math.round(page.length / 1000)} kB of HTML.`);

const offered = readOptions(
  {
    name: "Two offers",
    plan: "money.json",
    replications: 5,
    interest: "6 %",
    daysPerYear: 250,
    options: [
      { name: "quicker table", set: { "line.dressing.cycle": "5 s" }, price: "9000 EUR", life: 10 },
      { name: "five more places", set: { "line.dressing.buffer": 8 }, price: "400 EUR", life: 10 },
    ],
  },
  files,
);
const offers = sound(offered.question, offered.faults);
console.log(compareOffers(offers, await runStudy(offers.study, made)).words[0]);

const times = readTimes(
  `dressing (s)\n${[8.1, 9.4, 7.7, 10.2, 8.8, 9.1, 12.6, 8.3, 9.9, 7.9, 8.6, 11.3].join("\n")}\n`,
);
const fits = sound(times.columns, times.faults).map((column) => fitColumn(column, { seed: "example", samples: 200 }));
console.log(fits[0]!.advice.words);
console.log(JSON.stringify(planFragment(fits, "times.csv").line));

const money = readPlan(JSON.parse(files.readText("money.json")), files);
const plan = sound(money.plan, money.faults);
const days = readObserved("headsPerHour\n410\n395\n402\n", plan);
const { gap, quantities } = await calibrate(plan, sound(days.observed, days.faults), { seed: "example", days: 5 });
console.log(
  `${quantities[0]!.info.label}: ${gap ? "the plan's days differ from" : "no difference shown to"} the observed ones.`,
);
