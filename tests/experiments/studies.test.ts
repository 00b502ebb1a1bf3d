import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { responsesOf } from "../../sim/observations/index.ts";
import { formatFault } from "../../sim/plan/index.ts";
import { readStudy } from "../../sim/study/index.ts";

const FOLDER = resolve(import.meta.dirname, "../../experiments/studies");

function read(name: string) {
  const readText = (other: string) => readFileSync(join(FOLDER, other), "utf8");
  return readStudy(JSON.parse(readText(name)), { readText }, { knownResponses: responsesOf });
}

describe("every study in experiments/", () => {
  it.each(readdirSync(FOLDER).filter((name) => name.endsWith(".json")))("%s is sound and asks a question", (name) => {
    const { study, faults } = read(name);
    expect(faults.map(formatFault)).toEqual([]);
    expect(study!.question).toMatch(/\w.*[?.]$/);
    expect(study!.variants.length).toBeGreaterThan(1);
  });

  it("shows a stopping rule with antithetic pairs, a selection and a screening", () => {
    expect(read("until-precise.json").study!.procedure).toMatchObject({ antithetic: true, stopping: { atMost: 200 } });
    expect(read("choose-the-best.json").study!.procedure.selection).toMatchObject({ probability: 0.95 });
    expect(read("screening.json").study!.design).toMatchObject({ kind: "screening", levels: 4 });
  });
});
