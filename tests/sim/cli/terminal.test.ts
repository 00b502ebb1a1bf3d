import { EventEmitter } from "node:events";
import { describe, expect, it } from "vitest";
import { Stopped } from "../../../sim/cli/faults.ts";
import {
  counted,
  interruption,
  processTerminal,
  progress,
  readingProgress,
  sayingStages,
  type Terminal,
  untilInterrupted,
} from "../../../sim/cli/terminal.ts";
import { fakeTerminal } from "../../support/fakeTerminal.ts";

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

describe("a search", () => {
  const rounds = ["Trying 4 changes.", "8 of 90 tried.", "12 of 90 tried.", "16 of 90 tried.", "Choosing among 3."];

  it("says each stage once where no line can be rewritten, and a round of it once a minute", () => {
    const { terminal, said } = fakeTerminal(false);
    let now = 0;
    const say = sayingStages(terminal, () => now);
    for (const words of rounds) say(words);
    expect(said).toEqual(["Trying 4 changes.", "8 of 90 tried.", "Choosing among 3."]);
    say("Choosing among 2.");
    expect(said).toHaveLength(3);
    now += 61_000;
    say("Choosing among 1.");
    expect(said.at(-1)).toBe("Choosing among 1.");
  });

  it("says all on a terminal, and shows no quarters of its small rounds elsewhere", () => {
    const live = fakeTerminal(true);
    const say = sayingStages(live.terminal, () => 0);
    for (const words of rounds) say(words);
    expect(live.said).toEqual(rounds);
    const { terminal, said } = fakeTerminal(false);
    let now = 0;
    const shown = progress(terminal, () => now, true);
    for (let done = 0; done <= 40; done++) {
      now = done * 1000;
      shown.update(done, 40);
    }
    expect(said).toEqual([]);
    now += 61_000;
    shown.update(40, 80);
    expect(said).toEqual([expect.stringMatching(/^40 of 80 days simulated/)]);
  });
});

describe("progress", () => {
  it("rewrites one line on a terminal, with share, time gone and time left", () => {
    const { terminal, drawn, said } = fakeTerminal(true);
    let now = 5000;
    const shown = progress(terminal, () => now);
    shown.update(0, 100);
    now += 30_000;
    shown.update(25, 100);
    expect(drawn.at(-1)).toBe("======..................  25 %  25 of 100 days, 30 s, about 1 min 30 s left");
    shown.end();
    expect(drawn.at(-1)).toBe("");
    expect(said).toEqual([]);
  });

  it("reckons the time left from the days of this run, not from those an earlier one did", () => {
    const { terminal, drawn } = fakeTerminal(true);
    let now = 0;
    const shown = progress(terminal, () => now);
    shown.update(90, 200);
    now += 7_200_000;
    shown.update(100, 200);
    expect(drawn.at(-1)).toMatch(/100 of 200 days, 2 h 0 min, about 20 h 0 min left$/);
  });

  it("reckons the time left from the recent pace, which may have changed", () => {
    const { terminal, drawn } = fakeTerminal(true);
    let now = 0;
    let done = 0;
    const shown = progress(terminal, () => now);
    const leftAfter = (seconds: number, perSecond: number): string => {
      for (let second = 0; second < seconds; second++) {
        now += 1000;
        done += perSecond;
        shown.update(done, 100_000);
      }
      return drawn.at(-1)!.replace(/^.* about /, "");
    };
    shown.update(0, 100_000);
    expect(leftAfter(300, 10)).toBe("2 h 41 min left");
    // 97,000 days at ten a second; then at a hundred a second, which after two minutes is all that counts.
    leftAfter(20, 100);
    const soon = leftAfter(110, 100);
    expect(soon).toBe("14 min 0 s left");
  });

  it("does not rewrite more than ten times a second, but always shows the end", () => {
    const { terminal, drawn } = fakeTerminal(true);
    const shown = progress(terminal, () => 0);
    for (let done = 0; done <= 1000; done++) shown.update(done, 1000);
    expect(drawn).toHaveLength(2);
    expect(drawn.at(-1)).toMatch(/^={24} 100 %/);
  });

  it("says a plain line at each quarter where no line can be rewritten", () => {
    const { terminal, said, drawn } = fakeTerminal(false);
    let now = 0;
    const shown = progress(terminal, () => now);
    for (let done = 0; done <= 40; done++) {
      now = done * 1000;
      shown.update(done, 40);
    }
    shown.end();
    expect(said).toEqual([
      "10 of 40 days simulated (25 %), 10 s, about 30 s left",
      "20 of 40 days simulated (50 %), 20 s, about 20 s left",
      "30 of 40 days simulated (75 %), 30 s, about 10 s left",
      "40 of 40 days simulated (100 %), 40 s",
    ]);
    expect(drawn).toEqual([]);
  });

  it("says a plain line after a minute without one", () => {
    const { terminal, said } = fakeTerminal(false);
    let now = 0;
    const shown = progress(terminal, () => now);
    for (let done = 0; done <= 7; done++) {
      now = done * 10_000;
      shown.update(done, 1000);
    }
    expect(said).toEqual(["6 of 1000 days simulated (0 %), 1 min 0 s, about 2 h 45 min left"]);
  });

  it("says no more lines than there are days", () => {
    const { terminal, said } = fakeTerminal(false);
    const shown = progress(terminal, () => 0);
    shown.update(0, 1);
    shown.update(1, 1);
    expect(said).toHaveLength(1);
  });
});

describe("readingProgress", () => {
  const read = (live: boolean, stepMs: number) => {
    const { terminal, said, drawn } = fakeTerminal(live);
    let now = 0;
    const shown = readingProgress(terminal, () => now);
    for (let done = 0; done < 100; done++) {
      shown.update(done, 100);
      now += stepMs;
    }
    shown.end();
    return { said, drawn };
  };

  it("says nothing of what takes less than two seconds", () => {
    expect(read(true, 19)).toEqual({ said: [], drawn: [] });
    expect(read(false, 19)).toEqual({ said: [], drawn: [] });
  });

  it("rewrites a line from two seconds on, and takes it away", () => {
    const { drawn, said } = read(true, 100);
    expect(drawn[0]).toBe("20 of 100 variants checked");
    expect(drawn.at(-2)).toBe("99 of 100 variants checked");
    expect(drawn.at(-1)).toBe("");
    expect(said).toEqual([]);
  });

  it("says one line where none can be rewritten", () => {
    expect(read(false, 100)).toEqual({ said: ["20 of 100 variants checked; the rest follows"], drawn: [] });
  });
});

describe.each(["SIGHUP", "SIGINT", "SIGTERM"] as const)("%s", (name) => {
  it("is told to the work, as Stopped with its name", async () => {
    const events = new EventEmitter();
    const work = untilInterrupted(events, async (signal) => {
      events.emit(name);
      signal.throwIfAborted();
    });
    await expect(work).rejects.toSatisfy((error) => error instanceof Stopped && error.signal === name);
  });

  it("is listened for no longer than the work takes, and only once", async () => {
    const events = new EventEmitter();
    await untilInterrupted(events, async () => {
      expect(events.listenerCount(name)).toBe(1);
      events.emit(name);
      expect(events.listenerCount(name)).toBe(0);
    });
    expect(events.listenerCount(name)).toBe(0);
  });

  it("is waited for, and not for ever when it came before the waiting", async () => {
    const events = new EventEmitter();
    await untilInterrupted(events, async (signal) => {
      const waiting = interruption(signal);
      events.emit(name);
      await waiting;
      await interruption(signal);
      expect(signal.aborted).toBe(true);
    });
  });
});

it.each([
  [0, "0 lorries"],
  [1, "1 lorry"],
  [2, "2 lorries"],
])("counts %i as %s", (number, words) => {
  expect(counted(number, "lorry", "lorries")).toBe(words);
  expect(counted(number, "day")).toBe(number === 1 ? "1 day" : `${number} days`);
});
