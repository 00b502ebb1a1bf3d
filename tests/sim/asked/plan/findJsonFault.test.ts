import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findJsonFault } from "../../../../sim/asked/plan/findJsonFault.ts";

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe("findJsonFault", () => {
  it("finds nothing wrong with what the language's own writer made", () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 5 }), fc.constantFrom(undefined, 1, "\t"), (text, indent) => {
        expect(findJsonFault(JSON.stringify(JSON.parse(text), null, indent))).toBeNull();
      }),
      { seed: 7 },
    );
  });

  it("agrees with the language's own parser on texts with one character gone, doubled or changed", () => {
    const edit = fc.constantFrom("gone", "doubled", "changed");
    fc.assert(
      fc.property(
        fc.json({ maxDepth: 3 }),
        fc.nat(),
        edit,
        fc.constantFrom(...'{}[],:"\\ 01.eE+-tn\n/'),
        (json, seed, how, other) => {
          const at = seed % json.length;
          const middle = { gone: "", doubled: json[at]!.repeat(2), changed: other }[how];
          const text = json.slice(0, at) + middle + json.slice(at + 1);
          const flaw = findJsonFault(text);
          // The language takes a key that stands twice, and what comes after it we have not looked at.
          if (flaw?.found.includes("appears twice")) return;
          expect(flaw === null).toBe(parses(text));
        },
      ),
      { seed: 8, numRuns: 2000 },
    );
  });

  it("stops at a hundred levels of brackets", () => {
    expect(findJsonFault("[".repeat(100) + "]".repeat(100))).toBeNull();
    expect(findJsonFault("[".repeat(100_000))?.allowed).toBe("at most 100 levels of brackets");
  });
});
