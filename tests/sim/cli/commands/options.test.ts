import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { folderDigest } from "../../../support/folderDigest.ts";
import { offersFile, PRICED_PLAN } from "../../../support/offers.ts";

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

  it("tells of a plan with uncertain figures in how many worlds each option pays, in the folder as well", async () => {
    const plan = {
      ...PRICED_PLAN,
      uncertain: [{ name: "skinning's cycle time", paths: ["line.skinning.cycle"], guess: "a third" }],
    };
    const folder = folderWith(offersFile({ plan }));
    const { code, err } = await callCli(folder, ["options", "offers.json", "--worlds", "10", "--out", "worth"]);
    expect(code).toBe(0);
    expect(err).toMatch(
      /"nothing new" never pays back in 95 of 100 worlds; it earns its price .* in hardly any world\./,
    );
    expect(err).toMatch(/"a fourth" (never )?pays back .*in 95 of 100 worlds[;,] /);
    expect(err).toMatch(/To know every uncertain figure before choosing is worth|no figure has to be known first/);
    const { inWorlds, words } = JSON.parse(readFileSync(join(folder, "worth/line-up.json"), "utf8"));
    expect(inWorlds).toMatchObject({ worlds: 10, days: 4, uncertain: ["skinning's cycle time"] });
    expect(inWorlds.options).toHaveLength(3);
    expect(words).toEqual(expect.arrayContaining(inWorlds.words));
    // It breaks a limit more often.
    expect(inWorlds.words.join(" ")).not.toContain("fewer people");
    expect(readFileSync(join(folder, "worth/report.html"), "utf8")).toContain("95 of 100 worlds");
    const known = await callCli(folderWith(offersFile()), ["options", "offers.json", "--worlds", "10"]);
    expect(known).toMatchObject({
      code: 2,
      err: expect.stringMatching(/the plan says of no figure that it is uncertain/),
    });
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
