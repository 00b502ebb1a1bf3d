import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder, SMALL_STUDY } from "../../../support/cliFolder.ts";
import { NAMED_DANGERS } from "../../../support/dangers.ts";
import { demandFile } from "../../../support/demands.ts";
import { improveFileOf } from "../../../support/improveCases.ts";
import { offersFile } from "../../../support/offers.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";

/** Starting the program and loading the report take most of a second each time. */
const PATIENCE = { timeout: 60_000 };

describe("gambrel check", PATIENCE, () => {
  it("tells plans and studies apart by what they hold and finds them sound", async () => {
    const folder = cliFolder({ "a.txt": SMALL_PLAN });
    const { code, out, err } = await callCli(folder, ["check", "a.txt", "study.json"]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(err).toMatch(/^a\.txt: valid\. Plan "Small plant": 4 stages/);
    expect(err).toMatch(/study\.json: valid\. Study "Skinners & places": 3 variants, 5 simulated days each/);
  });

  it("tells the heads that come on the average where a lorry may stay away", async () => {
    const [first, second] = SMALL_PLAN.supply.loads;
    const plan = { ...SMALL_PLAN, supply: { loads: [first, { ...second, comes: "50 %" }] } };
    const { err } = await callCli(cliFolder({ "plan.json": plan }), ["check", "plan.json"]);
    expect(err).toContain("On average 360 of 480 heads come, with 1.5 of 2 lorries.");
  });

  it("says in one paragraph what hurts on such a line and who decides, but not in the JSON", async () => {
    const { out, err } = await callCli(cliFolder(), ["check", "plan.json", "--json"]);
    const said = err.split("\n").filter((line) => NAMED_DANGERS.every((danger) => danger.test(line)));
    expect(said).toHaveLength(1);
    expect(out).not.toMatch(/veterinarian/);
    const unsound = await callCli(cliFolder(), ["check", "absent.json"]);
    expect(unsound.err).not.toMatch(/veterinarian/);
  });

  it("warns of what a sound plan probably does not mean, and still ends with exit code 0", async () => {
    const [hanging, stunning, bleeding, skinning] = SMALL_PLAN.line;
    const plan = { ...SMALL_PLAN, line: [hanging, stunning, { ...bleeding, places: 5 }, skinning] };
    const folder = cliFolder({ "plan.json": plan });
    const { code, out, err } = await callCli(folder, ["check", "plan.json", "--json"]);
    expect(code).toBe(0);
    const warning =
      "plan.json: warning: line[2].places: 5 places with a mean dwell of 1 min 30 s allow no more than 200 /h, less than the target of 300 /h; 8 places would allow it";
    expect(err).toContain(`${warning}\n`);
    const [{ warnings, ...found }] = JSON.parse(out);
    expect(found).toMatchObject({ sound: true, faults: [] });
    expect(warnings).toContain(warning);
  });

  it("answers five mistakes with five messages, one a line, and exit code 2", async () => {
    const [hanging, stunning, bleeding, skinning] = SMALL_PLAN.line;
    const plan = {
      ...SMALL_PLAN,
      colour: "blue",
      target: 300,
      line: [{ ...hanging, rate: "360 kg" }, { ...stunning, buffer: -1 }, bleeding, { ...skinning, crew: "dresing" }],
    };
    const folder = cliFolder({ "plan.json": plan });
    const { code, out, err } = await callCli(folder, ["check", "plan.json"]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    const lines = err.trim().split("\n");
    expect(lines.filter((line) => line.startsWith("plan.json: "))).toHaveLength(5);
    expect(lines.at(-1)).toBe("5 faults found. Nothing was written.");
    for (const word of ["colour", "target", "line[0].rate", "line[1].buffer", "line[3].crew"])
      expect(err).toContain(word);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "study.json"]);
  });

  it("knows demands, options and questions of what to share out", async () => {
    const folder = cliFolder({ "a.txt": demandFile(), "b.txt": offersFile(), "c.txt": improveFileOf() });
    const { code, err } = await callCli(folder, ["check", "a.txt", "b.txt", "c.txt"]);
    expect(code).toBe(0);
    expect(err).toMatch(/^a\.txt: valid\. Demand "Test plant": a plan of \d+ stations/);
    expect(err).toMatch(/^b\.txt: valid\. Options "Offers": 3 options, 6 simulated days each/m);
    expect(err).toMatch(/^c\.txt: valid\. Question "places in an even exponential line": 136 allowed designs/m);
  });

  it("goes on to the next file after a bad one", async () => {
    const folder = cliFolder({ "broken.json": "{ not json" });
    const { code, err } = await callCli(folder, ["check", "absent.json", "broken.json", "plan.json"]);
    expect(code).toBe(2);
    expect(err).toMatch(/absent\.json: there is no such file/);
    expect(err).toMatch(/broken\.json: line 1, column 3/);
    expect(err).toMatch(/plan\.json: valid/);
  });

  it("gives its findings as JSON on standard output when asked", async () => {
    const { code, out } = await callCli(cliFolder(), ["check", "plan.json", "absent.json", "--json"]);
    expect(code).toBe(2);
    expect(JSON.parse(out)).toMatchObject([
      {
        file: "plan.json",
        kind: "plan",
        sound: true,
        faults: [],
        warnings: [
          expect.stringMatching(/line\[1\]: nothing keeps a head from being stunned/),
          expect.stringMatching(/day: a break may begin while a stunned head waits/),
        ],
      },
      {
        file: "absent.json",
        kind: null,
        sound: false,
        faults: [expect.stringContaining("no such file")],
        warnings: [],
      },
    ]);
  });

  it.each(["[]", "{}", "3", "null"])("calls %s neither plan nor study", async (text) => {
    const { code, err } = await callCli(cliFolder({ "x.json": text }), ["check", "x.json"]);
    expect(code).toBe(2);
    expect(err).toMatch(/this is no plan .*, no study or question about a plan .*, and no demand/);
  });

  it("shows control characters in someone's file as question marks, never to the terminal", async () => {
    const name = "evil\u001b[2Jname";
    const { err } = await callCli(cliFolder({ "plan.json": { ...SMALL_PLAN, name } }), ["check", "plan.json"]);
    expect(err).not.toContain("\u001b");
  });
});

describe("gambrel check --responses", PATIENCE, () => {
  it("lists what can be asked for by what it tells of, with unit and direction, of what is alike one", async () => {
    const { code, out, err } = await callCli(cliFolder(), ["check", "--responses", "plan.json"]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(err).toMatch(/^The day$/m);
    expect(err).toMatch(/^ {2}finish +End of work on the line \(time of day; less is better\)$/m);
    expect(err).toMatch(/^ {2}working\.\S+ .*; and \d+ more like it$/m);
    expect(err.match(/^ {2}working\.\S+ {2,}.*share of its own time/gm)).toHaveLength(1);
  });

  it("lists every key with --more, and the same as JSON", async () => {
    const folder = cliFolder();
    const { err } = await callCli(folder, ["check", "--responses", "--more", "plan.json"]);
    const { out } = await callCli(folder, ["check", "--responses", "plan.json", "--json"]);
    const keys = JSON.parse(out).flatMap((group: { responses: { key: string }[] }) => group.responses);
    expect(err.match(/^ {2}\S/gm)).toHaveLength(keys.length);
    expect(keys[0]).toMatchObject({ key: "headsPerHour", better: "more" });
  });

  it("refuses several plans, another kind of file, and --more alone", async () => {
    const folder = cliFolder();
    for (const args of [
      ["--responses", "plan.json", "plan.json"],
      ["--responses", "study.json"],
      ["--more", "plan.json"],
    ])
      expect((await callCli(folder, ["check", ...args])).code).toBe(2);
  });

  it("is what a study with an unknown result is sent to, after the nearest", async () => {
    const { err } = await callCli(cliFolder({ "study.json": { ...SMALL_STUDY, responses: ["throughput"] } }), [
      "check",
      "study.json",
    ]);
    expect(err).toMatch(
      /responses\[0\]: 'throughput' is not a result; did you mean 'headsPerHour' or 'carcasses'\? gambrel check --responses PLAN/,
    );
    expect(err).not.toMatch(/more;/);
  });
});
