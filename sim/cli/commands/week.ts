import { decisionLines, weekTold, welfareLead, wrappedLines } from "../../../viz/index.ts";
import { type StudyResults, stableJsonParts } from "../../days/results/index.ts";
import { daySource } from "../../days/run/index.ts";
import { weekStudy } from "../../questions/week/index.ts";
import { BadInput } from "../faults.ts";
import { loadPlan, readInputFile } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { alone, runInto } from "../runFolder.ts";
import { simulateStudy } from "../simulate.ts";
import { CAUTION, type Terminal } from "../terminal.ts";

export interface WeekCommandOptions {
  seed: string;
  weeks: number;
  verify?: boolean;
  threads?: number;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Simulates the week of a plan many times, and tells of each day and of the week what it comes to. */
export async function weekCommand(terminal: Terminal, path: string, options: WeekCommandOptions): Promise<void> {
  const file = readInputFile(path, ceilingsOf(options));
  const plan = loadPlan(file);
  if (plan.week === undefined) {
    throw new BadInput([
      `${path}: this plan is of one day alone; give it a "week" with its days, or write { "plan": "${path}", "week": { ... } } into another file.`,
    ]);
  }
  const { seed, weeks, verify = false, out, overwrite = false, json } = options;
  const study = weekStudy(plan, seed, weeks);
  const run = async () => {
    const { sourceDigest } = await import("../../days/run/wire/index.ts");
    const words = ["week", path, "--weeks", String(weeks), "--seed", seed];
    const inputsSha256 = sourceDigest(daySource(study, "binned", verify));
    return simulateStudy(terminal, study, { words, options, traces: "binned", check: verify, inputsSha256 });
  };
  const results =
    out === undefined
      ? await run()
      : await runInto(out, overwrite, alone(out), async (write) => {
          const results = await run();
          await write({ results, plan: file.json });
          return results;
        });
  terminal.say(study.name, "bold");
  for (const line of weekSummary(results)) terminal.say(line);
  for (const line of wrappedLines(CAUTION)) terminal.say(line, "dim");
  terminal.say(
    out === undefined
      ? "Nothing was written. Add --out FOLDER for the report with the week board, and tables."
      : `Report: ${out}/report.html, with charts and tables beside it`,
  );
  if (json) for (const part of stableJsonParts(results)) terminal.data(part);
}

function weekSummary(results: StudyResults): string[] {
  const { verdict, words, orders, table, next } = weekTold(results);
  const lead = welfareLead(results);
  return [
    ...(lead === null ? [] : [lead]),
    ...wrappedLines(verdict),
    ...[...orders, ...words].flatMap((line) => wrappedLines(line, "  ")),
    "",
    ...decisionLines(table),
    "",
    ...next.flatMap((line) => wrappedLines(line)),
  ];
}
