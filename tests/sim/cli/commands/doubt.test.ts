import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";

/** Starting the program takes most of a second each time. */
const PATIENCE = { timeout: 120_000 };
const FEW = ["--worlds", "10", "--days", "2", "--threads", "1"];
const UNSURE = {
  ...SMALL_PLAN,
  uncertain: [
    { name: "skinning's cycle time", paths: ["line.skinning.cycle"], guess: "a third" },
    { name: "jams", paths: ["line.stunning.breakdowns.jam.repair"], guess: "a third" },
  ],
};
const folder = () => cliFolder({ "plan.json": UNSURE });

describe("gambrel doubt", PATIENCE, () => {
  it("begins with when work ends and what that hangs on, and writes nothing", async () => {
    const place = folder();
    const { code, out, err } = await callCli(place, ["doubt", "plan.json", ...FEW]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(err).toMatch(/\nWork ends between \d\d:\d\d and \d\d:\d\d on 95 of 100 days; /);
    expect(err).toMatch(/10 worlds with 2 days \(seed "1"\)/);
    expect(err).toMatch(/\nskinning's cycle time {2}guess {2}/);
    expect(err).toMatch(/\nMeasure first: skinning's cycle time \(a guess\)/);
    expect(err).toMatch(/official veterinarian/);
    expect(existsSync(join(place, "runs"))).toBe(false);
  });

  it("says of a study which variant to choose; what is alike in every world beats nothing; the file is what --json prints", async () => {
    const place = folder();
    const { code, out, err } = await callCli(place, ["doubt", "study.json", ...FEW, "--json", "--out", "runs/doubt"]);
    expect(code).toBe(0);
    expect(err).toMatch(/Written: runs\/doubt\/doubt\.json/);
    expect(readFileSync(join(place, "runs/doubt/doubt.json"), "utf8")).toBe(out);
    const doubt = JSON.parse(out);
    expect(doubt.counts).toEqual({ worlds: 10, days: 2, seed: "7" });
    // "same again" is the plan as it is: on the same days of the same worlds it must come out the same, to the bit.
    expect(doubt.means[2]).toEqual(doubt.means[0]);
    expect(doubt.figures.map(({ kind }: { kind: string }) => kind)).toEqual(["guess", "guess"]);
    const again = await callCli(place, ["doubt", "study.json", ...FEW, "--out", "runs/doubt"]);
    expect(again.code).toBe(2);
    expect(again.err).toMatch(/already holds a run/);
  });

  it("refuses a plan without uncertain figures, another kind of file and too few worlds, and says what to do", async () => {
    const place = cliFolder();
    const known = await callCli(place, ["doubt", "plan.json"]);
    expect(known.code).toBe(2);
    expect(known.err).toMatch(
      /plan\.json: uncertain: the plan says of no figure that it is uncertain; write .*"guess": "a third"/,
    );
    const few = await callCli(place, ["doubt", "plan.json", "--worlds", "2"]);
    expect(few).toMatchObject({ code: 2 });
    expect(few.err).toMatch(/Give a whole number from 10 to 10000/);
  });
});
