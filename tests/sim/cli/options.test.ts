import { Command } from "commander";
import { describe, expect, it } from "vitest";
import {
  CEILINGS,
  ceilingOption,
  ceilingsOf,
  ceilingWords,
  concurrencyOption,
  lostAfterOption,
  queueOption,
  replicationsOption,
  resumeOption,
  seedOption,
  threadsOption,
  tracesOption,
  whichDayOption,
} from "../../../sim/cli/options.ts";
import { MAX_DAYS, MAX_EVENTS } from "../../../sim/days/run/index.ts";

function parse(...args: string[]): Record<string, unknown> {
  const command = new Command().exitOverride().configureOutput({ writeErr: () => {} });
  for (const option of [seedOption(), replicationsOption(), whichDayOption(), tracesOption()]) {
    command.addOption(option);
  }
  return command.parse(args, { from: "user" }).opts();
}

describe("options", () => {
  it("leave seed, replications and traces to the study unless they are given", () => {
    expect(parse()).toEqual({ day: 1 });
  });

  it("take a seed as text, digits included", () => {
    expect(parse("--seed", "007").seed).toBe("007");
  });

  it.each(["0", "-1", "1.5", "1e3", "ten", "", "1000001"])("refuse %j replications", (text) => {
    expect(() => parse(`--replications=${text}`)).toThrow();
  });

  it("count a single day from 1", () => {
    expect(parse("--day", "1").day).toBe(1);
    expect(() => parse("--day", "0")).toThrow();
  });

  it("count threads from 1 to 512, a worker's too", () => {
    const parseThreads = (...args: string[]) =>
      new Command()
        .exitOverride()
        .configureOutput({ writeErr: () => {} })
        .addOption(threadsOption())
        .addOption(concurrencyOption())
        .addOption(lostAfterOption())
        .addOption(resumeOption())
        .parse(args, { from: "user" })
        .opts();
    expect(parseThreads("--threads", "512", "--concurrency", "3")).toEqual({
      threads: 512,
      concurrency: 3,
      lostAfter: 30,
    });
    for (const args of [
      ["--threads", "0"],
      ["--threads", "513"],
      ["--concurrency", "two"],
      ["--lost-after", "0"],
    ]) {
      expect(() => parseThreads(...args)).toThrow();
    }
  });

  it("take the address of a queue, with or without TLS, and nothing else", () => {
    const address = (text: string) =>
      new Command()
        .exitOverride()
        .configureOutput({ writeErr: () => {} })
        .addOption(queueOption())
        .parse(["--queue", text], { from: "user" })
        .opts().queue;
    for (const sound of ["redis://h", "rediss://u:p@h:6380/2", "redis://[::1]:6379"])
      expect(address(sound)).toBe(sound);
    for (const bad of ["h:6379", "http://h", "redis://", "redis://h:port", ""]) expect(() => address(bad)).toThrow();
  });
});

function parsed(...args: string[]): { ceiling?: Record<string, number> } {
  const command = new Command().exitOverride().configureOutput({ writeErr: () => {} });
  return command.addOption(ceilingOption()).parse(args, { from: "user" }).opts();
}

describe("--ceiling", () => {
  it("takes the place of a ceiling and leaves the others", () => {
    const options = parsed("--ceiling", "events=1e9", "--ceiling", "megabytes=0.5");
    expect(ceilingsOf(options)).toEqual({ ...CEILINGS, events: 1e9, megabytes: 0.5 });
    expect(parsed(...ceilingWords(options))).toEqual(options);
    expect(ceilingsOf(parsed())).toEqual(CEILINGS);
  });

  it.each(["events", "events=", "events=0", "events=-1", "events=1e16", "evens=1", "__proto__=1", "days=many"])(
    "refuses %j",
    (text) => {
      expect(() => parsed("--ceiling", text)).toThrow(/Give one of megabytes, events, days/);
    },
  );

  it("stands where the simulation has it", () => {
    expect(CEILINGS).toMatchObject({ events: MAX_EVENTS, days: MAX_DAYS });
  });
});
