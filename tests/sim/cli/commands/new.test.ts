import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { runCli } from "../../../support/runCli.ts";
import { temporaryFolder } from "../../../support/temporaryFolder.ts";

const PATIENCE = { timeout: 60_000 };

const ask = (folder: string, args: string[], input?: string) => runCli(folder, ["new", ...args], {}, undefined, input);

describe("gambrel new", PATIENCE, () => {
  it("writes a plan of the usual answers that a day runs with, and names three commands to go on with", async () => {
    const folder = temporaryFolder();
    const { code, out, err } = await ask(folder, ["--yes", "--set", "name=Ridge & Vale", "--set", "heads=60"]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(readdirSync(folder)).toEqual(["ridge-vale.json"]);
    expect(err).toMatch(/Written: ridge-vale\.json/);
    const commands = [...err.matchAll(/^ {2}gambrel (.+?) {2,}/gm)].map((match) => match[1]!.split(" "));
    expect(commands).toHaveLength(3);
    expect(commands.every((words) => words.at(-1) === "ridge-vale.json")).toBe(true);
    const quick = commands.filter(([command]) => command !== "why");
    const codes = [];
    for (const words of quick) codes.push((await runCli(folder, words)).code);
    expect(codes).toEqual([0, 0]);
  });

  it("takes answers line by line where standard input is no terminal, an empty line for the usual one", async () => {
    const folder = temporaryFolder();
    const lines = ["Ridge", "400", "", "", "none", "1", "", "10", "", ...Array(10).fill("")];
    const { code, err } = await ask(folder, ["plant.json"], `${lines.join("\n")}\n`);
    expect([code, err]).toEqual([0, expect.stringContaining("bring 400 heads")]);
    const plan = JSON.parse(readFileSync(join(folder, "plant.json"), "utf8"));
    expect(plan).toMatchObject({ name: "Ridge", day: { breaks: [] }, supply: { loads: [{ headsPerCrate: 10 }] } });
  });

  it("refuses all faults of the lines at once, and writes nothing", async () => {
    const folder = temporaryFolder();
    const { code, err } = await ask(folder, ["plant.json"], "Ridge\n12x\nsix\n");
    expect(code).toBe(2);
    expect(err).toMatch(/^heads: '12x'.*\nstart: 'six'.*\nstandard input: the answers end before "end"/);
    expect(readdirSync(folder)).toEqual([]);
  });

  it("refuses lines that nothing asks for", async () => {
    const { code, err } = await ask(temporaryFolder(), ["plant.json"], "\n".repeat(25));
    expect([code, err]).toEqual([2, expect.stringMatching(/line \d+: nothing is asked any more/)]);
  });

  it("replaces no file, and finds a free name where none is given", async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "plant.json"), "mine");
    const { code, err } = await ask(folder, ["plant.json", "--yes"]);
    expect([code, err]).toEqual([2, expect.stringContaining("plant.json: this is there already")]);
    writeFileSync(join(folder, "my-plant.json"), "mine");
    expect((await ask(folder, ["--yes"])).code).toBe(0);
    for (const name of ["plant.json", "my-plant.json"]) expect(readFileSync(join(folder, name), "utf8")).toBe("mine");
    expect(readdirSync(folder).sort()).toEqual(["my-plant-2.json", "my-plant.json", "plant.json"]);
  });

  it("meets a key that there is not by the nearest, and one that nothing speaks of by leaving it out", async () => {
    const folder = temporaryFolder();
    const unknown = await ask(folder, ["--yes", "--set", "haeds=3"]);
    expect([unknown.code, unknown.err]).toEqual([2, expect.stringContaining("did you mean 'heads'?")]);
    const unasked = await ask(folder, ["--yes", "--set", "steps=chilling", "--set", "skinning=hand"]);
    expect([unasked.code, unasked.err]).toEqual([2, expect.stringContaining("--set skinning: this plant has nothing")]);
    expect((await ask(folder, ["--yes", "--set", "heads"])).code).toBe(2);
    expect(readdirSync(folder)).toEqual([]);
  });

  it("refuses a folder that is not there before it asks", async () => {
    const folder = temporaryFolder();
    const { code, err } = await ask(folder, ["sub/plant.json", "--yes"]);
    expect([code, err]).toEqual([2, expect.stringContaining("there is no folder sub")]);
    expect(readdirSync(folder)).toEqual([]);
  });
});
