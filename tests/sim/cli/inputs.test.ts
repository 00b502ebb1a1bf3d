import { spawnSync } from "node:child_process";
import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { BadInput } from "../../../sim/cli/faults.ts";
import { loadPlan, loadStudy, readInputFile, readTextFile, refuseOtherKind } from "../../../sim/cli/inputs.ts";
import { cliFolder, SMALL_STUDY } from "../../support/cliFolder.ts";
import { demandFile } from "../../support/demands.ts";
import { improveFileOf } from "../../support/improveCases.ts";
import { offersFile } from "../../support/offers.ts";
import { SMALL_PLAN } from "../../support/smallPlan.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

it("keeps the text as it stands and reads what it says", () => {
  const file = join(temporaryFolder(), "a.json");
  writeFileSync(file, '{ "a" :1 }\n');
  expect(readInputFile(file)).toMatchObject({ text: '{ "a" :1 }\n', json: { a: 1 } });
});

it("takes the files it names from its own folder, wherever the program runs", () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, "studies"));
  writeFileSync(join(folder, "times.csv"), "s\n5\n");
  writeFileSync(join(folder, "studies", "a.json"), "{}");
  expect(readInputFile(join(folder, "studies", "a.json")).files.readText("../times.csv")).toBe("s\n5\n");
});

it.each([
  ["absent.json", /no such file/],
  [".", /this is a folder/],
])("calls %s bad input, with the reason", (name, reason) => {
  const path = join(temporaryFolder(), name);
  expect(() => readInputFile(path)).toThrow(BadInput);
  expect(() => readInputFile(path)).toThrow(reason);
});

it("tells where JSON breaks off", () => {
  const file = join(temporaryFolder(), "a.json");
  writeFileSync(file, '{\n  "a": }');
  expect(() => readInputFile(file)).toThrow(/a\.json: line 2, column 8/);
});

function file(content: string | Uint8Array): string {
  const path = join(temporaryFolder(), "file");
  writeFileSync(path, content);
  return path;
}

describe("readTextFile", () => {
  it("gives the text as it stands, byte order mark included, longer than what is read at once", () => {
    const text = `\uFEFF${"é".repeat(100_000)}\r\n`;
    expect(readTextFile(file(text), 1)).toBe(text);
  });

  it("reads up to the ceiling and no further, and says how to raise it", () => {
    expect(readTextFile(file("x".repeat(1000)), 0.001)).toHaveLength(1000);
    expect(() => readTextFile(file("x".repeat(1001)), 0.001)).toThrow(/larger than 0\.001 MB; .*--ceiling megabytes=/);
  });

  it.runIf(process.platform === "linux")("refuses what has no end or nobody at the other one", () => {
    const pipe = join(temporaryFolder(), "pipe");
    expect(spawnSync("mkfifo", [pipe]).status).toBe(0);
    for (const path of ["/dev/zero", pipe]) expect(() => readTextFile(path, 1)).toThrow(/a pipe or a device; save/);
    const link = join(temporaryFolder(), "link");
    symlinkSync("/dev/zero", link);
    expect(() => readTextFile(link, 1)).toThrow(/a pipe or a device/);
  });

  it("refuses text in another encoding, a folder, and a name with NUL in it", () => {
    expect(() => readTextFile(file(new Uint8Array([0xff, 0xfe, 0x7b, 0])), 1)).toThrow(/not text in UTF-8; save it/);
    for (const bytes of [
      [0x7b, 0],
      [0, 0x7b],
    ])
      expect(() => readTextFile(file(new Uint8Array([...bytes, ...bytes])), 1)).toThrow(/text in UTF-16; save it as/);
    expect(() => readTextFile(temporaryFolder(), 1)).toThrow(/this is a folder; name a file in it/);
    expect(() => readTextFile("a\0b", 1)).toThrow(/a path cannot contain the character NUL/);
  });
});

const refusing = (json: unknown, wanted: "plan" | "study" | "demand") => () =>
  refuseOtherKind({ path: "x.json", json } as Parameters<typeof refuseOtherKind>[0], wanted);

describe("refuseOtherKind", () => {
  it("names the command that the file is for, and what was wanted", () => {
    expect(refusing(demandFile(), "plan")).toThrow(
      'x.json: this is a demand; size a plan for it with "gambrel size", or name a plan.',
    );
    expect(refusing(offersFile(), "study")).toThrow(/this is a file of options; .* or name a study\./);
    expect(refusing(improveFileOf(), "demand")).toThrow(
      /is a question for gambrel improve; answer it with "gambrel improve"/,
    );
  });

  it("lets pass what is of the kind, and what shows no sign of any", () => {
    expect(refusing(demandFile(), "demand")).not.toThrow();
    expect(refusing({ name: "x" }, "plan")).not.toThrow();
  });
});

it("gives the plan of a sound file", () => {
  expect(loadPlan(readInputFile(join(cliFolder(), "plan.json"))).name).toBe("Small plant");
});

it("gives every fault a line that begins with the file's name", () => {
  const folder = cliFolder({ "plan.json": { ...SMALL_PLAN, colour: 1, shape: 2 } });
  const path = join(folder, "plan.json");
  try {
    loadPlan(readInputFile(path));
    expect.unreachable();
  } catch (error) {
    expect(error).toBeInstanceOf(BadInput);
    const { lines } = error as BadInput;
    expect(lines).toHaveLength(2);
    for (const line of lines) expect(line.startsWith(`${path}: `)).toBe(true);
  }
});

it("gives the study and its base plan as the file wrote it", async () => {
  const { study, basePlan } = await loadStudy(readInputFile(join(cliFolder(), "study.json")));
  expect(study.variants.map(({ name }) => name)).toEqual(["base", "+1 person", "same again"]);
  expect(basePlan).toEqual(SMALL_PLAN);
});

it("knows which responses the plan has", async () => {
  const folder = cliFolder({ "study.json": { ...SMALL_STUDY, responses: ["headsPerHuor"] } });
  await expect(loadStudy(readInputFile(join(folder, "study.json")))).rejects.toThrow(/headsPerHuor.*headsPerHour/);
});

it("points out that a plan is no study", async () => {
  await expect(loadStudy(readInputFile(join(cliFolder(), "plan.json")))).rejects.toThrow(/run it with "gambrel day"/);
});
