/** The pictures of a study as SVG files. Run: npx tsx experiments/examples/drawChart.ts FOLDER */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { argv } from "node:process";
import { formatFault, readPlan, runSingleDay } from "gambrel";
import { chartFiles } from "gambrel/charts";

const path = resolve(import.meta.dirname, "../plans/parts/chiller.json");
const { plan, faults } = readPlan(JSON.parse(readFileSync(path, "utf8")), {
  readText: (name) => readFileSync(name, "utf8"),
});
if (plan === null) throw new Error(faults.map(formatFault).join("\n"));

const results = runSingleDay(plan, "example", "binned", { gambrel: "example", command: "drawChart.ts" });
const folder = argv[2] ?? "pictures";
mkdirSync(folder, { recursive: true });
for (const { name, svg } of chartFiles(results))
  writeFileSync(join(folder, name.endsWith(".svg") ? name : `${name}.svg`), svg);
console.log(`${chartFiles(results).length} pictures in ${folder}`);
