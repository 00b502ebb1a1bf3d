import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../../sim/asked/plan/index.ts";
import { checkRules } from "../../../../../sim/asked/plan/rules/checkRules.ts";

const line = [
  { name: "kill", kind: "station", section: "hot", cycle: "5 s" },
  { name: "packing", kind: "station", cycle: "5 s" },
];
const told = (cleaning: object, more: object = {}) => checkRules({ line, day: { cleaning }, ...more }).map(formatFault);

describe("cleaning", () => {
  it("takes some time, of all or of sections that there are, each once", () => {
    expect(told({ length: "45 min" })).toEqual([]);
    expect(told({ sections: [{ section: "hot" }, { section: "line" }] })).toEqual([]);
    expect(told({})).toEqual([
      'day.cleaning: no length and no sections; allowed: "length", "sections" or both; write for example "length": "45 min"',
    ]);
    expect(told({ sections: [{ section: "hit" }, { section: "hot" }, { section: "hot" }] })).toEqual([
      "day.cleaning.sections[0].section: 'hit' is no section; allowed: 'hot', 'line'; did you mean 'hot'?",
      "day.cleaning.sections[2].section: 'hot' appears twice; allowed: each section once; delete one of them",
    ]);
  });

  it("has its water counted where the plan counts that of the plant", () => {
    const cleaning = { sections: [{ section: "hot", water: "500 L" }] };
    expect(told(cleaning, { utilities: {} })).toEqual([]);
    expect(told(cleaning)).toEqual([
      'day.cleaning.sections[0].water: the plan counts no water of the plant; allowed: "utilities" beside it; add "utilities": {} to the plan',
    ]);
  });
});
