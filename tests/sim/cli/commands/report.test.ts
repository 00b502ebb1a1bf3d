import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import chromium from "@sparticuz/chromium";
import readWorkbook from "read-excel-file/node";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { reportCommand } from "../../../../sim/cli/commands/report.ts";
import { BadInput } from "../../../../sim/cli/faults.ts";
import { callCli } from "../../../support/callCli.ts";
import { fakeTerminal } from "../../../support/fakeTerminal.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";
import { temporaryFolder } from "../../../support/temporaryFolder.ts";

const folder = mkdtempSync(join(tmpdir(), "gambrel-report-"));
const run = join(folder, "run");
const text = (name: string) => readFileSync(join(run, name), "utf8");
const report = (args: readonly string[], env = {}) => callCli(folder, ["report", ...args], env);

beforeAll(async () => {
  writeFileSync(join(folder, "plan.json"), JSON.stringify(SMALL_PLAN));
  await callCli(folder, ["day", "plan.json", "--out", "run"]);
}, 120_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("gambrel report", () => {
  it("draws what was lost or changed anew, to the last byte, and leaves the data alone", async () => {
    const [page, results] = [text("report.html"), text("results.json")];
    const charts = readdirSync(join(run, "charts"));
    writeFileSync(join(run, "report.html"), "spoilt");
    rmSync(join(run, "charts"), { recursive: true });
    const { code, err } = await report(["run"]);
    expect([code, err]).toEqual([0, expect.stringContaining(`Written: ${join("run", "report.html")}`)]);
    expect([text("report.html"), text("results.json")]).toEqual([page, results]);
    expect(readdirSync(join(run, "charts"))).toEqual(charts);
  });

  it.each([
    ["doubt.json", /left; its report is report\.html\. To draw it anew run gambrel doubt again with --overwrite/],
    ["dossier.json", /its report is dossier\.html\. To draw it anew run gambrel size again/],
    ["plan.json", /there is no results\.json in it; name the folder of a finished run/],
  ])("draws nothing where there are no results: %s", async (file, told) => {
    const left = temporaryFolder();
    writeFileSync(join(left, file), "{}");
    expect(await report([left])).toMatchObject({ code: 2, err: expect.stringMatching(told) });
  });

  it("gives other programs a workbook, a PDF and PNG charts when they are asked for", async () => {
    const browser = await chromium.executablePath();
    expect((await report(["run", "--xlsx", "--png", "--pdf"], { GAMBREL_BROWSER: browser })).code).toBe(0);
    const sheets = await readWorkbook(readFileSync(join(run, "tables.xlsx")));
    const names = readdirSync(join(run, "charts"));
    const images = names.filter((name) => name.endsWith(".png"));
    expect(images).toHaveLength(names.length / 2);
    expect(sheets.map(({ sheet }) => sheet).slice(0, 3)).toEqual(["Answer", "Results", "Inputs"]);
    expect(sheets.length).toBeLessThanOrEqual(8);
    expect(sheets[0]!.data.flat()).toContain("Animal welfare and people's safety come before throughput.");
    const carcasses = sheets[1]!.data.find((row) => row.includes("carcasses"))!;
    expect(carcasses.some((cell) => typeof cell === "number" && cell > 0)).toBe(true);
    expect(readFileSync(join(run, "report.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
    // Portable Network Graphics (second edition), 5.2: the signature of every PNG.
    const signature = [...readFileSync(join(run, "charts", images[0]!)).subarray(0, 8)];
    expect(signature).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  });

  it("prints by itself: with an installed browser, else with the one that the checkout brings", async () => {
    rmSync(join(run, "report.pdf"), { force: true });
    const { code, err } = await report(["run", "--pdf"], { GAMBREL_BROWSER: "" });
    expect({ code, err }).toEqual({ code: 0, err: expect.not.stringContaining("No PNG or PDF was written") });
    expect(readFileSync(join(run, "report.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
  });

  it("writes what needs no browser where none starts, says what is missing, and ends with exit code 1", async () => {
    for (const name of ["report.html", "tables.xlsx"]) rmSync(join(run, name), { force: true });
    writeFileSync(join(run, "report.pdf"), "drawn elsewhere");
    const { code, err } = await report(["run", "--png", "--pdf", "--xlsx"], {
      GAMBREL_BROWSER: join(folder, "no-browser"),
    });
    expect([code, err]).toEqual([
      1,
      expect.stringMatching(
        /Written: .*\nNo PNG or PDF was written\. GAMBREL_BROWSER: no browser starts from .*; give the path of Chrome/,
      ),
    ]);
    expect((await readWorkbook(readFileSync(join(run, "tables.xlsx")))).length).toBeGreaterThan(3);
    expect(text("report.html")).toContain("<!doctype html>");
    expect(text("report.pdf")).toBe("drawn elsewhere");
  });

  it("takes no data from elsewhere through a link, and waits for no pipe", async () => {
    const linked = join(folder, "linked");
    cpSync(run, linked, { recursive: true });
    rmSync(join(linked, "values.csv"));
    symlinkSync(join(folder, "plan.json"), join(linked, "values.csv"));
    const refused = reportCommand(fakeTerminal(false).terminal, linked, {});
    await expect(refused).rejects.toThrow(/values\.csv: this is not a plain file; remove it/);
    expect(readlinkSync(join(linked, "values.csv"))).toBe(join(folder, "plan.json"));
    rmSync(linked, { recursive: true });
  });

  it.each([
    ["nowhere", /nowhere: no such folder/],
    ["empty", /empty: there is no results\.json in it; name the folder of a finished run/],
    ["other", /results\.json: this does not hold the results of a run/],
  ])("refuses the folder %s with the remedy", async (name, words) => {
    mkdirSync(join(folder, "empty"), { recursive: true });
    mkdirSync(join(folder, "other"), { recursive: true });
    writeFileSync(join(folder, "other", "results.json"), "{}");
    const refused = reportCommand(fakeTerminal(false).terminal, join(folder, name), {});
    await expect(refused).rejects.toThrow(words);
    await expect(refused).rejects.toBeInstanceOf(BadInput);
    expect(readdirSync(folder).sort()).toEqual(["empty", "other", "plan.json", "run"]);
  });
});
