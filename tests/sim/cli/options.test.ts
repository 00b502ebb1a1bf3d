import { Command } from "commander";
import { describe, expect, it } from "vitest";
import { replicationOption, replicationsOption, seedOption, tracesOption } from "../../../sim/cli/options.ts";

function parse(...args: string[]): Record<string, unknown> {
  const command = new Command().exitOverride().configureOutput({ writeErr: () => {} });
  for (const option of [seedOption(), replicationsOption(), replicationOption(), tracesOption()]) {
    command.addOption(option);
  }
  return command.parse(args, { from: "user" }).opts();
}

describe("options", () => {
  it("leave seed and replications to the study unless they are given", () => {
    expect(parse()).toEqual({ replication: 0, traces: "binned" });
  });

  it("take a seed as text, digits included", () => {
    expect(parse("--seed", "007").seed).toBe("007");
  });

  it.each(["0", "-1", "1.5", "1e3", "ten", "", "1000001"])("refuse %j replications", (text) => {
    expect(() => parse(`--replications=${text}`)).toThrow();
  });

  it("count a single replication from 0", () => {
    expect(parse("--replication", "0").replication).toBe(0);
    expect(() => parse("--replication", "-1")).toThrow();
  });
});
