import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkNewFile, writeNewFile } from "../../../../sim/cli/commands/size.ts";
import { BadInput } from "../../../../sim/cli/faults.ts";
import { KINDS_OF_PLANT } from "../../../../sim/cli/options.ts";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { NAMED_DANGERS } from "../../../support/dangers.ts";
import { demandFile } from "../../../support/demands.ts";
import { temporaryFolder } from "../../../support/temporaryFolder.ts";

const PATIENCE = { timeout: 120_000 };

function folderWith(demand: unknown): string {
  const folder = cliFolder();
  writeFileSync(join(folder, "demand.json"), JSON.stringify(demand));
  return folder;
}

/** Few stations, so that it is quick. */
const LEFT_OUT = [
  "hind-leg cutting",
  "pre-loosening",
  "four-leg cutting",
  "abdomen opening",
  "final trim",
  "chiller loading",
];

const SMALL = demandFile({ steps: Object.fromEntries(LEFT_OUT.map((name) => [name, { leftOut: true }])) });

describe("gambrel size", PATIENCE, () => {
  it("tells the design, estimate beside simulation with its interval, and every figure's source; writes a plan that is sound", async () => {
    const folder = folderWith(SMALL);
    const { code, err } = await callCli(folder, ["size", "demand.json", "--replications", "3", "--out", "first.json"]);
    expect(code).toBe(0);
    expect(err).toMatch(/^Full line by hand: \d+ people in each shift; in 3 simulated days it ends work at \d\d:\d\d/m);
    expect(err).toMatch(/takt: 1 \/ design rate +\d/);
    expect(err).toMatch(/needed +estimate +simulated +95 % interval, 3 days/);
    expect(err).toMatch(/Throughput.* carcasses\/h .* \(.* to .*\)/);
    expect(err).toMatch(/given by the demand:\n {2}heads a week 20000/);
    expect(err).toMatch(/published:\n {2}\(Lebas/);
    expect(err).toMatch(/invented, to be replaced by your own:/);
    const check = await callCli(folder, ["check", "first.json"]);
    expect(check.code).toBe(0);
  });

  it("shows every kind of plant in a row, and writes the plan of the one that is asked for", async () => {
    const folder = folderWith(SMALL);
    const choice = ["--alternative", "compact plant, fewest people", "--out", "small.json"];
    const { code, err } = await callCli(folder, ["size", "demand.json", "--replications", "2", ...choice]);
    expect(code).toBe(0);
    for (const name of KINDS_OF_PLANT) expect(err).toMatch(new RegExp(`^${name} +\\d+ +\\d+ +\\d`, "m"));
    expect(err).toMatch(/^What the plan does: compact plant, fewest people$/m);
    const plan = JSON.parse(readFileSync(join(folder, "small.json"), "utf8"));
    expect(plan.crews.map(({ name }: { name: string }) => name)).toContain("live side");
    const refused = await callCli(folder, ["size", "demand.json", "--alternative", "huge plant"]);
    expect(refused.code).toBe(2);
  });

  it("says what hurts on such a line, and who decides", async () => {
    const { err } = await callCli(folderWith(SMALL), ["size", "demand.json", "--replications", "2"]);
    for (const danger of NAMED_DANGERS) expect(err).toMatch(danger);
  });

  it("prints design and results as JSON and writes nothing unless asked", async () => {
    const folder = folderWith(SMALL);
    const { code, out } = await callCli(folder, ["size", "demand.json", "--replications", "2", "--json"]);
    expect(code).toBe(0);
    const { design, simulated } = JSON.parse(out);
    expect(design.rate.headsPerDay).toBe(4000);
    expect(simulated.variants[0].estimates.headsPerHour.n).toBe(2);
    expect(existsSync(join(folder, "first.json"))).toBe(false);
  });

  it("tells every fault and ends with 2", async () => {
    const { code, err } = await callCli(folderWith(demandFile({ stpes: {}, week: { days: 9 } })), [
      "size",
      "demand.json",
      "--out",
      "x.json",
    ]);
    expect(code).toBe(2);
    expect(err).toMatch(/demand\.json: stpes: unknown key; .*did you mean 'steps'\?/);
    expect(err).toMatch(/2 faults found\. Nothing was written\./);
  });

  it("writes a dossier to a folder: documents, drawing, workbook, figures, every plan; and never into a folder of somebody else's", async () => {
    const demand = { ...SMALL, compare: { kinds: ["compact plant"] } };
    const folder = folderWith(demand);
    const { code, err } = await callCli(folder, [
      "size",
      "demand.json",
      "--replications",
      "2",
      "--uncertain",
      "--out",
      "dossier",
    ]);
    expect(err).toMatch(/^Build: compact plant\.$/m);
    expect(err).toMatch(/Money is open, since the demand names no prices/);
    for (const danger of NAMED_DANGERS) expect(err).toMatch(danger);
    expect(code).toBe(0);
    const names = readdirSync(join(folder, "dossier"));
    for (const name of [
      "dossier",
      "annex-builder",
      "annex-bank",
      "annex-veterinarian",
      "annex-trainer",
      "annex-sources",
    ])
      expect(names).toEqual(expect.arrayContaining([`${name}.html`, `${name}.pdf`]));
    expect(names).toEqual(
      expect.arrayContaining(["layout.svg", "layout.pdf", "tables.xlsx", "dossier.json", "demand.json", "plans"]),
    );
    expect(readdirSync(join(folder, "dossier", "plans")).toSorted()).toEqual([
      "compact-plant.json",
      "first-weeks.json",
    ]);
    const plan = JSON.parse(readFileSync(join(folder, "dossier", "plans", "compact-plant.json"), "utf8"));
    expect(plan.uncertain.length).toBeGreaterThan(3);
    const pages = Number(/The owner's document has (\d+) pages/.exec(err)![1]);
    expect(pages).toBeGreaterThan(3);
    expect(pages).toBeLessThanOrEqual(12);
    writeFileSync(join(folder, "dossier", "mine.txt"), "precious");
    const refused = await callCli(folder, ["size", "demand.json", "--out", "dossier", "--overwrite"]);
    expect(refused.code).toBe(2);
    expect(refused.err).toMatch(/holds files that are not of a run \(mine\.txt\)/);
    const kind = await callCli(folder, ["size", "demand.json", "--out", "other", "--alternative", "compact plant"]);
    expect(kind.err).toMatch(/--alternative: a dossier compares kinds of plant; name them under "compare"/);
    expect(existsSync(join(folder, "other"))).toBe(false);
  });

  it("never replaces a file unless told to, and finds that out before it works", async () => {
    const folder = folderWith(SMALL);
    writeFileSync(join(folder, "mine.json"), "precious");
    const refused = await callCli(folder, ["size", "demand.json", "--out", "mine.json"]);
    expect(refused.code).toBe(2);
    expect(refused.err).toMatch(/mine\.json: this file exists; name another one, or add --overwrite/);
    expect(readFileSync(join(folder, "mine.json"), "utf8")).toBe("precious");
    const nowhere = await callCli(folder, ["size", "demand.json", "--out", "no/where.json"]);
    expect(nowhere.err).toMatch(/there is no folder no; make it first/);
  });
});

describe("checkNewFile", () => {
  it("lets a new file be, and an old one only where it may be replaced", () => {
    const path = join(temporaryFolder(), "plan.json");
    expect(() => checkNewFile(path, false)).not.toThrow();
    writeFileSync(path, "old");
    expect(() => checkNewFile(path, false)).toThrow(BadInput);
    expect(() => checkNewFile(path, true)).not.toThrow();
  });

  it("refuses a folder, and a file in a folder that is not there", () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "inside"));
    expect(() => checkNewFile(join(folder, "inside"), true)).toThrow(/this is a folder/);
    expect(() => checkNewFile(join(folder, "nowhere", "plan.json"), true)).toThrow(/there is no folder/);
  });
});

describe("writeNewFile", () => {
  it("leaves the whole file and nothing beside it", () => {
    const folder = temporaryFolder();
    writeNewFile(join(folder, "plan.json"), "whole");
    expect(readFileSync(join(folder, "plan.json"), "utf8")).toBe("whole");
    expect(readdirSync(folder)).toEqual(["plan.json"]);
  });

  it("leaves what was there when it fails", () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "plan.json"));
    expect(() => writeNewFile(join(folder, "plan.json"), "text")).toThrow();
    expect(readdirSync(folder)).toEqual(["plan.json"]);
  });
});
