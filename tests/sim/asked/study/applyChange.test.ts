import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/index.ts";
import { applyChangeInPlace } from "../../../../sim/asked/study/applyChange.ts";
import { type Change, joinChanges } from "../../../../sim/asked/study/change.ts";

const NOTHING: Change = { set: {}, insert: [], remove: [] };
const plan = () => ({
  line: [{ name: "a" }, { name: "b", jams: [1, 2, 3] }, { name: "c" }],
  limits: [{ name: "x" }],
  note: "n",
});

function changed(change: Partial<Change>) {
  const json = plan();
  const faults = applyChangeInPlace(json, { ...NOTHING, ...change }).map(formatFault);
  return { json, faults, names: json.line.map(({ name }) => name).join("") };
}

describe("applyChangeInPlace", () => {
  it("sets first, puts in next, takes out last", () => {
    const { json, faults, names } = changed({
      set: { "line[2].name": "d" },
      insert: [
        { side: "before", path: "line.a", element: { name: "0" } },
        { side: "after", path: "line.b", element: { name: "B" } },
        { side: "after", path: "line.B", element: { name: "C" } },
      ],
      remove: ["line.b", "limits[0]"],
    });
    expect(faults).toEqual([]);
    expect(names).toBe("0aBCd");
    expect(json.limits).toEqual([]);
  });

  it("replaces a stage by putting the new one beside it and taking the old one out", () => {
    const element = { name: "new" };
    const { names, json } = changed({ insert: [{ side: "before", path: "line.b", element }], remove: ["line.b"] });
    expect(names).toBe("anewc");
    expect(json.line[1]).not.toBe(element);
  });

  it("follows all paths before it takes anything out, each place once, keys too", () => {
    expect(changed({ remove: ["line[0]", "line[1]", "line.b"] }).names).toBe("c");
    const { json } = changed({ remove: ["line.b.jams[0]", "line.b.jams[2]", "note"] });
    expect(json.line[1]).toEqual({ name: "b", jams: [2] });
    expect(json).not.toHaveProperty("note");
  });

  it("tells of every path that leads nowhere", () => {
    const insert = [
      { side: "after", path: "line.q", element: 1 },
      { side: "before", path: "line", element: 1 },
      { side: "before", path: "a..b", element: 1 },
    ] as const;
    expect(
      changed({ set: { "q.r": 1 }, insert: [...insert], remove: ["line.b.pay", "line[9]", "__proto__"] }).faults,
    ).toEqual([
      "q.r: 'q' is not a key in the plan; allowed: 'line', 'limits', 'note'; write one of these",
      "line.q: 'q' is not a name in 'line'; allowed: 'a', 'b', 'c'; write one of these",
      'line: this is not an element of a list; allowed: the path of an element of a list, such as "line.skinning"; to give a key a value, set it',
      'a..b: this is not a path; allowed: keys, names and [indexes], such as "line.skinning.buffer"; put names with dots or brackets in [""], such as line["cut no. 2"].positions',
      "line.b.pay: it is not there; allowed: the path of something that is in the plan",
      "line[9]: [9] is past the end of 'line'; allowed: [0] to [2]; counting begins at 0",
      "__proto__: '__proto__' is not a key in the plan; allowed: 'line', 'limits', 'note'; write one of these",
    ]);
  });
});

describe("joinChanges", () => {
  it("keeps the order within sets, insertions and removals", () => {
    const one: Change = { set: { a: 1 }, insert: [{ side: "after", path: "x", element: 1 }], remove: ["p"] };
    const two: Change = { set: { b: 2, a: 3 }, insert: [{ side: "before", path: "y", element: 2 }], remove: ["q"] };
    expect(joinChanges([one, two])).toEqual({
      ...{ set: { a: 3, b: 2 }, insert: [...one.insert, ...two.insert], remove: ["p", "q"] },
    });
    expect(joinChanges([])).toEqual(NOTHING);
  });
});
