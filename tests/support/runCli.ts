import { spawn } from "node:child_process";
import { once } from "node:events";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { builtProgram } from "./builtProgram.ts";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
/** Given as a file, since the folder the program runs in has no node_modules. */
const TSX = pathToFileURL(join(ROOT, "node_modules", "tsx", "dist", "esm", "index.mjs")).href;

/** The words with which a process becomes the command line of this project, as it is published. */
export function cliCommand(): string[] {
  return [process.execPath, builtProgram()];
}

/** The same from the sources. */
export function sourceCommand(): string[] {
  return [process.execPath, "--import", TSX, join(ROOT, "sim", "cli", "main.ts")];
}

export interface CliRun {
  code: number | null;
  out: string;
  err: string;
}

/**
 * Runs the command line in `folder` as a person would, without a terminal, and gives what it said and where. With
 * `interruptAfter`, Ctrl-C is pressed as soon as these words have been said; `input` comes through standard input.
 */
export async function runCli(
  folder: string,
  args: readonly string[],
  env: Record<string, string> = {},
  interruptAfter?: string,
  input?: string,
): Promise<CliRun> {
  const [program, ...before] = cliCommand();
  const child = spawn(program!, [...before, ...args], {
    cwd: folder,
    env: { ...process.env, NO_COLOR: "", ...env },
    stdio: [input === undefined ? "ignore" : "pipe", "pipe", "pipe"],
  });
  child.stdin?.end(input);
  let awaited = interruptAfter;
  const said = { out: "", err: "" };
  child.stdout!.setEncoding("utf8").on("data", (text: string) => {
    said.out += text;
  });
  child.stderr!.setEncoding("utf8").on("data", (text: string) => {
    said.err += text;
    if (awaited === undefined || !said.err.includes(awaited)) return;
    awaited = undefined;
    child.kill("SIGINT");
  });
  const [code] = await once(child, "close");
  return { code, ...said };
}
