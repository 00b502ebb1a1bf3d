import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, test } from "vitest";
import { parsePath } from "../../../sim/asked/plan/index.ts";
import { inputRows } from "../../../viz/pictures/index.ts";

const rowAt = (plan: unknown, path: string, sources: Parameters<typeof inputRows>[1] = []) =>
  inputRows(plan, sources).find((row) => row.path === path);

test("every figure stands with its path; words about the plan are no figures", () => {
  const plan = {
    $schema: "s",
    name: "n",
    notes: "x",
    sources: [],
    target: "600 /h",
    line: [{ name: "skinning", buffer: 4, off: false }],
  };
  expect(inputRows(plan, []).map(({ path, value }) => [path, value])).toEqual([
    ["target", "600 /h"],
    ["line.skinning.buffer", "4"],
    ["line.skinning.off", "no"],
  ]);
});

test("a distribution is one figure, a long list is told by its ends", () => {
  expect(rowAt({ cycle: { lognormal: { mean: "5 s", cv: 0.3 } } }, "cycle")!.value).toBe("lognormal: mean 5 s, cv 0.3");
  const empirical = Array.from({ length: 30 }, (_, i) => `${i} s`);
  expect(rowAt({ cycle: { empirical } }, "cycle")!.value).toBe("empirical: 30 values, 0 s ... 29 s");
  expect(rowAt({ buffer: null, crews: [], stages: ["a", "b"] }, "buffer")!.value).toBe("no limit");
});

test("the nearest part above that a note speaks for gives the source, by name or by number", () => {
  const plan = {
    line: [
      { name: "a", cycle: "5 s" },
      { name: "four-leg. cutting", cycle: "4 s", buffer: 1 },
    ],
  };
  const sources = [
    { path: "", kind: "invented", note: "all else" },
    { path: "line[0].cycle", kind: "measured", note: "stopwatch" },
    { path: 'line["four-leg. cutting"]', kind: "maker's figure", note: "data sheet" },
  ];
  expect(rowAt(plan, "line.a.cycle", sources)).toMatchObject({ kind: "measured", note: "stopwatch" });
  expect(rowAt(plan, 'line["four-leg. cutting"].buffer', sources)).toMatchObject({ kind: "maker's figure" });
  expect(rowAt({ target: "600 /h" }, "target", sources)).toMatchObject({ kind: "invented", note: "all else" });
});

test("a part may name its source beside its figures; a figure nobody speaks for is assumed", () => {
  const plan = { limits: [{ name: "stun to stick", source: "house rule", atMost: "10 s" }], target: "600 /h" };
  expect(rowAt(plan, "limits.stun to stick.atMost")).toMatchObject({ kind: "named beside it", note: "house rule" });
  expect(rowAt(plan, "target")).toMatchObject({ kind: "assumed", note: "no source named" });
});

test("paths of a whole plan can be read as paths of a plan", () => {
  const file = resolve(import.meta.dirname, "../../../experiments/plans/every-part.json");
  const plan = JSON.parse(readFileSync(file, "utf8"));
  const rows = inputRows(plan, plan.sources);
  expect(rows.length).toBeGreaterThan(200);
  for (const { path } of rows) expect(parsePath(path), path).not.toBeNull();
  expect(new Set(rows.map(({ path }) => path)).size).toBe(rows.length);
});
