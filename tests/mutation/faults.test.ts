import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { FAULTS } from "./faults.ts";

const ROOT = join(import.meta.dirname, "..", "..");

describe("every deliberate fault", () => {
  it.each(FAULTS)("$name: finds its place in the sources, once", ({ edits }) => {
    for (const { file, find } of edits) {
      const places = readFileSync(join(ROOT, file), "utf8").split(find).length - 1;
      expect({ file, find, places }).toEqual({ file, find, places: 1 });
    }
  });
});
