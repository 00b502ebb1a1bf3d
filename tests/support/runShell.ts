import { spawn } from "node:child_process";
import { once } from "node:events";
import { type CliRun, cliCommand } from "./runCli.ts";

/**
 * Runs a line of bash in `folder`, in which "$GAMBREL" stands for the command line of this project (write it without
 * quotes: it is several words). `user` runs it as another user, where this one may do so.
 */
export async function runShell(folder: string, line: string, user?: number): Promise<CliRun> {
  const child = spawn("bash", ["-c", line], {
    cwd: folder,
    env: { ...process.env, NO_COLOR: "", GAMBREL: cliCommand().join(" ") },
    stdio: ["ignore", "pipe", "pipe"],
    ...(user === undefined ? {} : { uid: user, gid: user }),
  });
  const said = { out: "", err: "" };
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    said.out += text;
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    said.err += text;
  });
  const [code] = await once(child, "close");
  return { code, ...said };
}
