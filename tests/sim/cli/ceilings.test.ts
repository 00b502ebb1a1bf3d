import { Command } from "commander";
import { describe, expect, it } from "vitest";
import { CEILINGS, ceilingOption, ceilingsOf, ceilingWords } from "../../../sim/cli/ceilings.ts";
import { MAX_DAYS, MAX_EVENTS } from "../../../sim/days/run/index.ts";

function parse(...args: string[]): { ceiling?: Record<string, number> } {
  const command = new Command().exitOverride().configureOutput({ writeErr: () => {} });
  return command.addOption(ceilingOption()).parse(args, { from: "user" }).opts();
}

describe("--ceiling", () => {
  it("takes the place of a ceiling and leaves the others", () => {
    const options = parse("--ceiling", "events=1e9", "--ceiling", "megabytes=0.5");
    expect(ceilingsOf(options)).toEqual({ ...CEILINGS, events: 1e9, megabytes: 0.5 });
    expect(parse(...ceilingWords(options))).toEqual(options);
    expect(ceilingsOf(parse())).toEqual(CEILINGS);
  });

  it.each(["events", "events=", "events=0", "events=-1", "events=1e16", "evens=1", "__proto__=1", "days=many"])(
    "refuses %j",
    (text) => {
      expect(() => parse("--ceiling", text)).toThrow(/Give one of megabytes, events, days/);
    },
  );

  it("stands where the simulation has it", () => {
    expect(CEILINGS).toMatchObject({ events: MAX_EVENTS, days: MAX_DAYS });
  });
});
