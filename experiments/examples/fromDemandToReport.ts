/**
 * A week's demand -> a plant -> what to change first -> a run folder with its report. The plant is invented.
 * Run: npx tsx experiments/examples/fromDemandToReport.ts FOLDER
 */
import { argv } from "node:process";
import {
  answerWhy,
  formatFault,
  inThreads,
  readDemand,
  readRunFolder,
  readStudy,
  runFiles,
  runStudy,
  simulateWith,
  sizePlant,
  writeRunFolder,
} from "gambrel";
import { chartFiles, renderReport } from "gambrel/charts";

const made = { gambrel: "example", command: "npx tsx experiments/examples/fromDemandToReport.ts" };

// What a week is to bring; every other figure is assumed, and `design.figures` says which, and from where.
const { demand, faults } = readDemand({
  name: "A small plant (invented)",
  alternative: "compact plant, fewest people",
  week: { heads: 300, days: 5 },
  day: { shifts: [{ name: "day", from: "06:00", to: "07:00" }] },
});
if (demand === null) throw new Error(faults.map(formatFault).join("\n"));
const { design, plan, faults: impossible } = sizePlant(demand);
if (plan === null) throw new Error(impossible.map(formatFault).join("\n"));
console.log(`${design.people} people in each shift at ${design.stations.length} stations.`);

// Its plan simulated in two threads: the same results as in one, to the bit.
const { study } = readStudy(
  { name: "The plant as sized", plan: "plan.json", replications: 16, responses: ["headsPerHour"] },
  { readText: () => JSON.stringify(design.plan) },
);
const sized = await runStudy(study!, { ...made, runner: inThreads(2) });
const { mean, low, high } = sized.variants[0]!.estimates.headsPerHour!;
console.log(`${mean.toFixed(1)} carcasses/h (${low?.toFixed(1)} to ${high?.toFixed(1)})`);

// What to change first. Many small studies, for which threads are not worth their start.
const options = { seed: "example", replications: 3, confidence: 0.95 };
const results = await answerWhy(plan, options, { simulate: simulateWith(made) });
console.log(results.advice?.words[0]);

// All of the run in one folder, as the commands write it; read back later to draw the report anew.
const folder = argv[2] ?? "run-of-example";
const drawn = { reportHtml: renderReport(results, { planFile: design.plan }), charts: chartFiles(results) };
writeRunFolder(folder, runFiles({ results, plan: design.plan, studyText: null, ...drawn }), true);
const again = readRunFolder(folder);
if (again.results === null) throw new Error(again.problem);
const isSame = renderReport(again.results, { planFile: again.plan }) === drawn.reportHtml;
console.log(`Written: ${folder}/report.html. Drawn anew from the folder it is ${isSame ? "the same" : "another one"}.`);
