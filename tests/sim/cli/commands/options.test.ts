import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { folderDigest } from "../../../support/folderDigest.ts";
import { offersFile } from "../../../support/offers.ts";

const PATIENCE = { timeout: 60_000 };

function folderWith(offers: unknown): string {
  const folder = cliFolder();
  writeFileSync(join(folder, "offers.json"), JSON.stringify(offers));
  return folder;
}

describe("gambrel options", PATIENCE, () => {
  it("tells what each option is worth, the best first, and the same as JSON", async () => {
    const { code, out, err } = await callCli(folderWith(offersFile()), ["options", "offers.json", "--json"]);
    expect(code).toBe(0);
    expect(err).toMatch(/6 days of each on the same random numbers, seed "7"/);
    expect(err).toMatch(/nothing new +1 000 +0 +-1 000 +-231 +never +never /);
    expect(err).toMatch(/"nothing new" does not pay/);
    expect(err).toMatch(/each option bought alone/);
    const { lineUp } = JSON.parse(out);
    expect(lineUp.options).toHaveLength(3);
    expect(lineUp.options[0].worth.presentValue.mean).toBe(-1000);
  });

  it("leaves a folder whose report answers first what the offers are worth, and is drawn anew the same", async () => {
    const folder = folderWith(offersFile());
    const out = ["options", "offers.json", "--out", "worth"];
    const { code, err } = await callCli(folder, out);
    expect([code, err]).toEqual([0, expect.stringMatching(/Written: worth\/report\.html, line-up\.json and more\.$/m)]);
    const inside = join(folder, "worth");
    const before = folderDigest(inside);
    expect(Object.keys(before)).toEqual(
      expect.arrayContaining(["asked.json", "charts/worth.svg", "line-up.json", "results.json"]),
    );
    const page = readFileSync(join(inside, "report.html"), "utf8");
    expect(page).toMatch(/<h2>Answer<\/h2>.*Best is .*Price, benefit and payback/s);
    // Nothing new never pays its price back, which is no number in JSON.
    expect(page).toMatch(/nothing new<\/bdi><\/th>(<td>.*?<\/td>){2}<td>never<\/td><td>never<\/td>/);
    expect((await callCli(folder, ["report", "worth"])).code).toBe(0);
    expect(folderDigest(inside)).toEqual(before);
    const again = await callCli(folder, out);
    expect([again.code, again.err]).toEqual([2, expect.stringMatching(/--overwrite/)]);
  });

  it("tells every fault and ends with 2; one day has no interval", async () => {
    const wrong = await callCli(folderWith(offersFile({ plan: "nowhere.json" })), ["options", "offers.json"]);
    expect(wrong.code).toBe(2);
    expect(wrong.err).toMatch(/offers\.json: plan: 'nowhere\.json' cannot be read \(there is no such file\)/);
    const one = await callCli(folderWith(offersFile()), ["options", "offers.json", "--replications", "1"]);
    expect([one.code, one.err]).toEqual([2, expect.stringMatching(/one day has no interval/)]);
  });
});
