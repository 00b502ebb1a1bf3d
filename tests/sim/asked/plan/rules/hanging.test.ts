import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../../sim/asked/plan/index.ts";
import { hanging } from "../../../../../sim/asked/plan/rules/hanging.ts";

const station = { kind: "station", name: "hanging", cycle: "5 s" };
const chain = { kind: "chain", name: "kill chain" };

describe("hanging", () => {
  it("refuses a line that begins with anything but a station", () => {
    expect(hanging({ line: [chain] }).map(formatFault)).toEqual([
      'line[0]: the line begins with a chain; allowed: a station; put a station before it that hangs the heads, say { "kind": "station", "name": "hanging", "cycle": "5 s" }',
    ]);
    expect(hanging({ line: [{ kind: "dwell", name: "d" }] })).toHaveLength(1);
  });

  it("refuses a way onto a chain, by order or by name, and allows one off it", () => {
    const message =
      "line[0].travel: a way onto the chain 'kill chain', whose shackles do not wait for it; allowed: none before a chain; make the chain longer by it, or delete it";
    expect(hanging({ line: [{ ...station, travel: "5 s" }, chain] }).map(formatFault)).toEqual([message]);
    const named = [{ ...station, travel: "5 s", next: "kill chain" }, { kind: "station", name: "b" }, chain];
    expect(hanging({ line: named }).map(formatFault)).toEqual([message]);
    expect(hanging({ line: [station, { ...chain, travel: "5 s" }, { kind: "station", name: "b" }] })).toEqual([]);
  });
});
