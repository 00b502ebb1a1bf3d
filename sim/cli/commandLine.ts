import { env } from "node:process";
import { shownAddress } from "../days/run/index.ts";
import type { StudyCommandOptions } from "./options.ts";
import { ceilingWords } from "./options.ts";

/** The command line that repeats a run, ready to paste into a POSIX shell. */
export function commandLine(words: readonly string[]): string {
  return words.map((word) => (/^[\w./:=@%+-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`)).join(" ");
}

/** The command line that finishes a run that was stopped, ready to paste; without any password. */
export function resumeLine(
  command: "study" | "improve" | "doubt",
  path: string,
  options: StudyCommandOptions,
  more: readonly string[] = [],
): string {
  const { seed, replications, traces, verify, out, overwrite, threads, queue, json } = options;
  const given = (name: string, value: string | number | undefined): string[] =>
    value === undefined ? [] : [name, String(value)];
  return commandLine([
    ...["gambrel", command, path, ...given("--seed", seed), ...given("--replications", replications), ...more],
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

/** The address of a queue with the password from GAMBREL_QUEUE_PASSWORD, unless the address has one of its own. */
export function queueAddress(written: string, password = env.GAMBREL_QUEUE_PASSWORD): string {
  const url = new URL(written);
  if (password === undefined || password === "" || url.password !== "") return written;
  url.password = password;
  return url.href;
}
