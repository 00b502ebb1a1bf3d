import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { NAMED_DANGERS } from "../../../support/dangers.ts";
import { exampleFile } from "../../../support/readExample.ts";

const PATIENCE = { timeout: 60_000 };
const PLAN = JSON.stringify(exampleFile("parts/site"));
const ONE_DAY = ["--replications", "1"];

describe("gambrel layout", PATIENCE, () => {
  it("says how large the plant is and what does not fit the plan, with the cautions, and writes nothing unasked", async () => {
    const folder = cliFolder({ "plant.json": PLAN });
    const before = readdirSync(folder);
    const { code, err, out } = await callCli(folder, ["layout", "plant.json", ...ONE_DAY]);
    expect(code).toBe(0);
    expect(err).toMatch(
      /^The plant takes about [\d ]+ m² in a building of \d+ x \d+ m\. It needs a connection of \d+ kW/,
    );
    expect(err).toMatch(/A schematic for talking, not for building/);
    expect(err).toMatch(/From bleeding to skinning the plan gives 0 s; the way drawn is [\d.]+ m and takes \d+ s/);
    for (const danger of NAMED_DANGERS) expect(err).toMatch(danger);
    expect(out).toBe("");
    expect(readdirSync(folder)).toEqual(before);
  });

  it("writes drawing, report and tables that say the same, and the same again for the same seed", async () => {
    const folder = cliFolder({ "plant.json": PLAN });
    const { code, out } = await callCli(folder, ["layout", "plant.json", ...ONE_DAY, "--out", "drawn", "--json"]);
    expect(code).toBe(0);
    const files = ["connections.csv", "equipment.csv", "layout.json", "layout.svg", "report.html"];
    expect(readdirSync(join(folder, "drawn")).sort()).toEqual(files);
    const text = (name: string) => readFileSync(join(folder, "drawn", name), "utf8");
    const found = JSON.parse(out);
    expect(JSON.parse(text("layout.json"))).toEqual(found);
    expect(text("layout.svg")).toMatch(/^<svg [^>]*height="\d+mm"[^>]*width="\d+mm"/);
    expect(
      text("equipment.csv")
        .split("\n")
        .filter((line) => line !== ""),
    ).toHaveLength(found.equipment.length + 1);
    const report = text("report.html");
    for (const { name } of found.equipment) expect(report).toContain(name);
    for (const { rows } of found.connections.parts)
      for (const { what } of rows) expect(report).toContain(what.replaceAll("&", "&amp;").replaceAll("'", "&#39;"));
    // The plan's own figure, and one that it gives as usual.
    expect(found.layout.figures.find(({ key }: { key: string }) => key === "line.pitch")).toMatchObject({
      value: "250 mm",
      source: "given",
    });
    const again = await callCli(folder, ["layout", "plant.json", ...ONE_DAY, "--json"]);
    expect(again.out).toBe(out);
  });

  it("refuses a folder with a run in it, and a plan that is not sound, before anything is written", async () => {
    const folder = cliFolder({ "plant.json": PLAN.replace('"25 cm"', "25") });
    const { code, err } = await callCli(folder, ["layout", "plant.json", "--out", "drawn"]);
    expect(code).toBe(2);
    expect(err).toMatch(/site\.line\.pitch: /);
    expect(existsSync(join(folder, "drawn"))).toBe(false);
    const other = cliFolder({ "plant.json": PLAN, "notes.txt": "mine" });
    const refused = await callCli(other, ["layout", "plant.json", "--out", "."]);
    expect(refused.code).toBe(2);
    expect(readdirSync(other)).not.toContain("layout.svg");
  });

  it("writes everything but the PDF where no browser starts, and says so", async () => {
    const folder = cliFolder({ "plant.json": PLAN });
    const { code, err } = await callCli(folder, ["layout", "plant.json", ...ONE_DAY, "--out", "drawn", "--pdf"], {
      GAMBREL_BROWSER: join(folder, "no-browser"),
    });
    expect(code).toBe(1);
    expect(err).toMatch(/GAMBREL_BROWSER: no browser starts/);
    expect(readdirSync(join(folder, "drawn"))).toContain("layout.svg");
    expect(readdirSync(join(folder, "drawn"))).not.toContain("layout.pdf");
  });
});
