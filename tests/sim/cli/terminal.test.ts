import { describe, expect, it } from "vitest";
import { processTerminal, type Terminal } from "../../../sim/cli/terminal.ts";

function terminalWith(
  isTTY: boolean,
  env: Record<string, string>,
): { terminal: Terminal; err: string[]; out: string[] } {
  const err: string[] = [];
  const out: string[] = [];
  const streams = {
    stdout: { write: (text: string) => out.push(text) },
    stderr: { isTTY, write: (text: string) => err.push(text) },
    env,
  };
  return { terminal: processTerminal(streams), err, out };
}

describe("processTerminal", () => {
  it("colours words on a terminal", () => {
    const { terminal, err } = terminalWith(true, {});
    terminal.say("bad", "red");
    expect(err).toEqual(["\u001b[31mbad\u001b[39m\n"]);
  });

  it.each([
    ["NO_COLOR is set", true, { NO_COLOR: "1" }],
    ["nobody watches", false, {}],
    ["the terminal is a dumb one", true, { TERM: "dumb" }],
  ])("uses no colour when %s", (_, isTTY, env) => {
    const { terminal, err } = terminalWith(isTTY, env);
    terminal.say("bad", "red");
    expect(err).toEqual(["bad\n"]);
  });

  it("shows the thin space between groups of digits as an ordinary one", () => {
    const { terminal, err } = terminalWith(false, {});
    terminal.say("224\u202f412 EUR");
    expect(err).toEqual(["224 412 EUR\n"]);
  });

  it("keeps words and data apart", () => {
    const { terminal, err, out } = terminalWith(false, {});
    terminal.say("word");
    terminal.data("{}");
    expect({ err, out }).toEqual({ err: ["word\n"], out: ["{}"] });
  });

  it("lets no control character of a name through", () => {
    const { terminal, err } = terminalWith(false, {});
    terminal.say("a\u001b[2Jb\u0007c\nd");
    expect(err).toEqual(["a?[2Jb?c?d\n"]);
  });

  it("shows what would turn a line round or cannot be seen as a question mark", () => {
    const { terminal, err } = terminalWith(true, {});
    terminal.say("a\u202eb\u2067c\u200fd\u2028e\ud800f\u200bg\u009b31mh");
    expect(err).toEqual(["a?b?c?d?e?f?g?31mh\n"]);
  });
});
