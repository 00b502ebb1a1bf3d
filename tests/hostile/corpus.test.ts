import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkCommand } from "../../sim/cli/commands/check.ts";
import { BadInput } from "../../sim/cli/faults.ts";
import { fakeTerminal } from "../support/fakeTerminal.ts";

const CORPUS = join(import.meta.dirname, "corpus");

/** What `gambrel check` says of a file: one line for each fault. */
async function faultsOf(path: string): Promise<readonly string[]> {
  try {
    await checkCommand(fakeTerminal(false).terminal, [path], {});
    return [];
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    return error.lines;
  }
}

/** "file: place: what was found; what is allowed or to be done": one line, and no word of the program's own. */
const LINE = /^[^\n\r]+: [^\n\r]+[;.][^\n\r]+$/u;
const INNARDS = /undefined|\[object| {4}at |Cannot read|is not a function|TypeError|RangeError/;

describe.each(["json", "plan", "study", "csv", "demand", "options", "improve"])(
  "a bad file of the corpus (%s)",
  (kind) => {
    const places: Record<string, string> = JSON.parse(readFileSync(join(CORPUS, `${kind}.json`), "utf8"));

    it("is there for each expectation, and has one", () => {
      const tables = kind === "csv" ? Object.keys(places).map((name) => name.replace(/json$/, "csv")) : [];
      expect(readdirSync(join(CORPUS, kind)).sort()).toEqual([...Object.keys(places), ...tables].sort());
    });

    it.each(Object.entries(places))("%s is refused with the place %j and what to do", async (name, place) => {
      const path = join(CORPUS, kind, name);
      const lines = await faultsOf(path);
      expect(lines.length).toBeGreaterThan(0);
      for (const line of lines) {
        expect(line).toMatch(LINE);
        expect(line).not.toMatch(INNARDS);
      }
      const said = lines.map((line) => line.slice(path.length + 2));
      expect(said.some((line) => (place === "UTF-8" ? line.includes(place) : line.startsWith(place)))).toBe(true);
    });
  },
);

it("holds more than three hundred bad files", () => {
  const names = readdirSync(CORPUS, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  expect(names.length).toBeGreaterThan(300);
});
