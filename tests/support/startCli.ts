import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { onTestFinished } from "vitest";
import { cliCommand } from "./runCli.ts";

export interface StartedCli {
  child: ChildProcess;
  /** Waits until it has said this on standard error; fails when it ends without. */
  until(words: string | RegExp): Promise<void>;
  /** Waits for its end; a signal stands for the code of a process that was killed. */
  ended(): Promise<{ code: number | null; signal: NodeJS.Signals | null; err: string }>;
}

/** Starts the command line in `folder` and leaves it running; what still runs at the end of the test is killed. */
export function startCli(folder: string, args: readonly string[], env: Record<string, string> = {}): StartedCli {
  const [program, ...before] = cliCommand();
  const child = spawn(program!, [...before, ...args], {
    cwd: folder,
    env: { ...process.env, NO_COLOR: "", ...env },
    stdio: ["ignore", "ignore", "pipe"],
  });
  onTestFinished(() => {
    if (child.exitCode === null && child.signalCode === null) child.kill("SIGKILL");
  });
  let err = "";
  const closed = once(child, "close") as Promise<[number | null, NodeJS.Signals | null]>;
  child.stderr!.setEncoding("utf8").on("data", (text: string) => {
    err += text;
  });
  const said = (words: string | RegExp): boolean => (typeof words === "string" ? err.includes(words) : words.test(err));
  return {
    child,
    async until(words) {
      while (!said(words)) {
        const ended = await Promise.race([once(child.stderr!, "data").then(() => false), closed.then(() => true)]);
        if (ended && !said(words)) throw new Error(`ended without saying ${words}: ${err}`);
      }
    },
    async ended() {
      const [code, signal] = await closed;
      return { code, signal, err };
    },
  };
}
