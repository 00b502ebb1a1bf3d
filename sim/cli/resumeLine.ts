import { shownAddress } from "../days/run/index.ts";
import { ceilingWords } from "./ceilings.ts";
import { commandLine } from "./commandLine.ts";
import type { StudyCommandOptions } from "./studyOptions.ts";

/** The command line that finishes a run that was stopped, ready to paste; without any password. */
export function resumeLine(command: "study" | "improve", path: string, options: StudyCommandOptions): string {
  const { seed, replications, traces, verify, out, overwrite, threads, queue, json } = options;
  const given = (name: string, value: string | number | undefined): string[] =>
    value === undefined ? [] : [name, String(value)];
  return commandLine([
    ...["gambrel", command, path, ...given("--seed", seed), ...given("--replications", replications)],
    ...given("--traces", traces),
    ...(verify ? ["--verify"] : []),
    ...given("--out", out),
    ...given("--threads", threads),
    ...given("--queue", queue === undefined ? undefined : shownAddress(queue)),
    ...ceilingWords(options),
    ...(overwrite ? ["--overwrite"] : []),
    ...(json ? ["--json"] : []),
    "--resume",
  ]);
}
