import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { readRunFolder, runFiles, writeRunFolder } from "../../../../sim/days/results/index.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";
import { temporaryFolder } from "../../../support/temporaryFolder.ts";

const PLAN = { name: "as it was read" };

function written(): string {
  const folder = join(temporaryFolder(), "run");
  const parts = { results: handMadeResults(), plan: PLAN, studyText: null, reportHtml: "<!doctype html>", charts: [] };
  writeRunFolder(folder, runFiles(parts), false);
  return folder;
}

it("gives back the results and the plan that a run folder was written with", () => {
  const { results, plan, problem } = readRunFolder(written());
  expect([results, plan, problem]).toEqual([handMadeResults(), PLAN, null]);
});

it("says in words why a folder holds no run, and of which file", () => {
  expect(readRunFolder("no-such-folder").problem).toMatch(/^no-such-folder: holds no results\.json; name the folder/u);
  for (const name of ["results.json", "plan.json"]) {
    const folder = written();
    writeFileSync(join(folder, name), '{ "cut');
    expect(readRunFolder(folder)).toMatchObject({
      results: null,
      problem: expect.stringContaining(join(folder, name)),
    });
  }
});
