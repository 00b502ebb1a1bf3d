import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");
/** Rooms whose numbers go into days and results. */
const ROOMS = ["maths", "asked/study", "day", "days/run", "questions/fit", "questions/calibrate"];
/** Squares and powers of two are exact in every runtime. */
const EXACT = /(?<![\w.])2 \*\* |\*\* 2(?![\w.])/;

it("no room that makes results takes a power from the runtime, whose last digits differ between releases", () => {
  const found = ROOMS.flatMap((room) =>
    readdirSync(join(ROOT, "sim", room), { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".ts"))
      .flatMap((name) =>
        readFileSync(join(ROOT, "sim", room, name), "utf8")
          .split("\n")
          .map((line) => ({ name, line })),
      ),
  );
  expect(found.length).toBeGreaterThan(1000);
  const code = found.filter(({ line }) => !/^\s*(\*|\/\*|\/\/)/.test(line));
  const taken = code.filter(({ line }) => /Math\.pow\(/.test(line) || (line.includes(" ** ") && !EXACT.test(line)));
  expect(taken).toEqual([]);
});
