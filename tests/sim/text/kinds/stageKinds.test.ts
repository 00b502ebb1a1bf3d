import { describe, expect, it } from "vitest";
import { byKind, does, STAGE_KINDS, type StepKind, stageKind } from "../../../../sim/text/kinds/index.ts";

const ALL: StepKind[] = [...STAGE_KINDS, "crates", "chain station"];
const kindsThat = (deed: Parameters<typeof does>[1]) => ALL.filter((kind) => does({ kind }, deed)).sort();

describe("kinds of stages", () => {
  it("say what their places do", () => {
    expect(kindsThat("work")).toEqual(["chain station", "crates", "station"]);
    expect(kindsThat("send heads on")).toEqual(["chain", "dwell", "station"]);
    expect(kindsThat("hold heads")).toEqual(["dwell"]);
    expect(kindsThat("carry stations")).toEqual(["chain"]);
    expect(kindsThat("stand on a chain")).toEqual(["chain station"]);
    expect(kindsThat("handle crates")).toEqual(["crates"]);
  });

  it("narrow a union of things by what they do", () => {
    type Thing = { kind: "dwell"; places: number } | { kind: "station"; positions: number };
    const placesOf = (thing: Thing) => (does(thing, "hold heads") ? thing.places : thing.positions);
    expect(placesOf({ kind: "dwell", places: 3 })).toBe(3);
    expect(placesOf({ kind: "station", positions: 2 })).toBe(2);
  });

  it("give each thing to the row of its kind", () => {
    type Thing = { kind: "a"; value: number } | { kind: "b"; text: string };
    const told = (thing: Thing) => byKind(thing, { a: ({ value }) => `${value}`, b: ({ text }) => text });
    expect([told({ kind: "a", value: 1 }), told({ kind: "b", text: "x" })]).toEqual(["1", "x"]);
  });

  it("are read from an unread file, or none is", () => {
    expect(stageKind("chain")).toBe("chain");
    expect([stageKind("crates"), stageKind(3), stageKind(undefined), stageKind("toString")]).toEqual(
      Array(4).fill(null),
    );
  });
});
