import { mkdirSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";
import process from "node:process";
import { textTable } from "../../sim/text/units/textTable.ts";
import type { Section } from "./section.ts";
import { extras } from "./sections/extras.ts";
import { growthWithHeads, growthWithStations } from "./sections/growth.ts";
import { livePage } from "./sections/livePage.ts";
import { planDays } from "./sections/planDays.ts";
import { serialLines } from "./sections/serialLines.ts";
import { startUp } from "./sections/startUp.ts";
import { threads } from "./sections/threads.ts";

/*
 * Measures speed and memory and prints them; `npm run bench -- lines days` measures only what is named. Figures go to
 * runs/bench.json as well. Nothing is asserted: what a figure is worth depends on the machine and on what else it does.
 */

const SECTIONS: Record<string, () => Section | Promise<Section>> = {
  lines: serialLines,
  days: planDays,
  extras,
  heads: growthWithHeads,
  stations: growthWithStations,
  threads,
  start: startUp,
  page: livePage,
};

function chosen(names: readonly string[]): string[] {
  const unknown = names.filter((name) => !(name in SECTIONS));
  if (unknown.length === 0) return names.length === 0 ? Object.keys(SECTIONS) : [...names];
  process.stderr.write(`No section ${unknown.join(", ")}. There are: ${Object.keys(SECTIONS).join(", ")}.\n`);
  process.exit(2);
}

const figures: Record<string, unknown> = {
  machine: `${cpus().length} x ${cpus()[0]?.model}`,
  runtime: `Node ${process.version}`,
};
for (const name of chosen(process.argv.slice(2))) {
  const section = await SECTIONS[name]!();
  process.stdout.write(`\n${section.title}\n\n${textTable(section.rows).join("\n")}\n`);
  figures[name] = section.figures;
}
mkdirSync("runs", { recursive: true });
writeFileSync(join("runs", "bench.json"), `${JSON.stringify(figures, null, 2)}\n`);
