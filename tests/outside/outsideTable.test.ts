import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { outsideTable } from "./outsideTable.ts";
import { REGISTER } from "./register/index.ts";

describe("the table of what is checked against the outside world", () => {
  it("is current (if not: npx tsx tests/outside/makeTable.ts)", () => {
    expect(readFileSync(new URL("README.md", import.meta.url), "utf8")).toBe(outsideTable());
  });

  it("names every test file here, and only those", () => {
    const files = readdirSync(new URL(".", import.meta.url)).filter((name) => name.endsWith(".test.ts"));
    const listed = [...REGISTER.map((part) => part.file), "outsideTable.test.ts"];
    expect(files.sort()).toEqual(listed.sort());
  });

  it("has one row per id, and a source and a comparison (or the reason for none) in each", () => {
    const rows = REGISTER.flatMap((part) => part.rows);
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
    for (const row of rows) {
      expect(row.source, row.id).not.toBe("");
      expect(row.simulated + row.exact > 0, row.id).toBe(row.notChecked === undefined);
    }
  });
});
