import type { Terminal } from "../../sim/cli/terminal.ts";

/** A terminal that remembers: `said` line by line, `drawn` each rewriting of the last line, `given` the data. */
export function fakeTerminal(live: boolean): { terminal: Terminal; said: string[]; drawn: string[]; given: string[] } {
  const said: string[] = [];
  const drawn: string[] = [];
  const given: string[] = [];
  const terminal: Terminal = {
    live,
    say: (line = "") => said.push(line),
    rewrite: (line) => drawn.push(line),
    data: (text) => given.push(text),
  };
  return { terminal, said, drawn, given };
}
