/** One day of a plan: reads it, tells every fault or the figures of the day. Run: npx tsx experiments/examples/oneDay.ts */
import { readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { argv } from "node:process";
import { compileLine, formatFault, measure, parseJson, readPlan, responsesOf, runDay } from "gambrel";

const path = argv[2] ?? resolve(import.meta.dirname, "../plans/ferncote.json");
const { value, fault } = parseJson(readFileSync(path, "utf8"));
if (fault !== null) throw new Error(`${path}: ${formatFault(fault)}`);

// Files that the plan names (tables of times) lie beside it.
const files = { readText: (name: string) => readFileSync(resolve(dirname(path), name), "utf8") };
const { plan, faults } = readPlan(value, files);
if (plan === null) throw new Error(faults.map(formatFault).join("\n"));

// A million events are ten times those of a full day here; without a ceiling a slip in the plan could run for ever.
const day = runDay(compileLine(plan), { seed: "example", replication: 0, mostEvents: 1_000_000 });
const values = measure(day, plan);
for (const { key, label, unit } of responsesOf(plan).slice(0, 8)) console.log(`${label}: ${values[key]} ${unit}`);
