import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import packageJson from "../../package.json" with { type: "json" };
import { builtProgram } from "../support/builtProgram.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const TSC = join(ROOT, "node_modules", "typescript", "bin", "tsc");
const top = mkdtempSync(join(tmpdir(), "gambrel-packed-"));
const app = join(top, "app");
const installed = join(app, "node_modules", "gambrel");

function run(program: string, args: readonly string[], cwd: string): { status: number | null; said: string } {
  const { status, stdout, stderr } = spawnSync(program, args, { cwd, encoding: "utf8" });
  return { status, said: `${stdout}${stderr}` };
}

/** What npm would install for a user: dependencies of dependencies too, nothing that only developers have. */
function productionPackages(): string[] {
  const { packages } = JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8"));
  return Object.entries(packages as Record<string, { dev?: boolean }>)
    .filter(([path, about]) => /^node_modules\/(@[^/]+\/)?[^/]+$/.test(path) && about.dev !== true)
    .map(([path]) => path.slice("node_modules/".length));
}

/** Packs the project as it is published and unpacks it where a stranger would have it. */
beforeAll(() => {
  const staging = join(top, "staging");
  for (const path of ["package.json", "README.md", "LICENSE", "CHANGELOG.md", "experiments"])
    cpSync(join(ROOT, path), join(staging, path), { recursive: true });
  const schemas = Object.values(packageJson.exports).filter((door) => typeof door === "string");
  for (const schema of schemas)
    for (const path of [schema, join(dirname(schema), "README.md")]) cpSync(join(ROOT, path), join(staging, path));
  const types = [TSC, "-p", join(ROOT, "tsconfig.build.json"), "--outDir", join(staging, "dist", "types")];
  expect(run(process.execPath, types, ROOT)).toEqual({ status: 0, said: "" });
  cpSync(dirname(builtProgram()), join(staging, "dist", "program"), { recursive: true });
  expect(run("npm", ["pack", "--ignore-scripts", "--pack-destination", top], staging).status).toBe(0);
  mkdirSync(installed, { recursive: true });
  const [packed] = readdirSync(top).filter((name) => name.endsWith(".tgz"));
  expect(run("tar", ["-xzf", join(top, packed!), "-C", installed, "--strip-components=1"], top).status).toBe(0);
  for (const name of productionPackages()) {
    const link = join(app, "node_modules", name);
    mkdirSync(dirname(link), { recursive: true });
    symlinkSync(join(ROOT, "node_modules", name), link);
  }
  writeFileSync(join(app, "package.json"), '{ "type": "module" }');
}, 180_000);
afterAll(() => rmSync(top, { recursive: true, force: true }));

describe("the packed package, in an empty folder, with what npm would install beside it", { timeout: 300_000 }, () => {
  const gambrel = (...args: string[]) =>
    run(process.execPath, ["--preserve-symlinks", join(installed, packageJson.bin.gambrel), ...args], app);

  it("is a command line that checks, simulates and writes a report", () => {
    const plan = join(installed, "experiments", "plans", "parts", "gate.json");
    expect(gambrel("--version")).toEqual({ status: 0, said: `${packageJson.version}\n` });
    expect(gambrel("check", plan)).toMatchObject({ status: 0, said: expect.stringMatching(/: valid\. Plan/) });
    writeFileSync(join(app, "bad.json"), '{ "line": [] }');
    const guide = /^Every key, unit and default: (.*)$/m.exec(gambrel("check", "bad.json").said)![1]!;
    expect(readFileSync(join(app, guide), "utf8")).toMatch(/^# The plan file/);
    expect(gambrel("day", plan, "--out", "run").status).toBe(0);
    expect(readdirSync(join(app, "run"))).toContain("report.html");
  });

  it("is a library with its types: each example compiles against it and runs", () => {
    cpSync(join(ROOT, "experiments", "plans"), join(app, "plans"), { recursive: true });
    cpSync(join(ROOT, "experiments", "examples"), join(app, "examples"), { recursive: true });
    for (const name of ["node", "undici-types"].map((types) => (types === "node" ? "@types/node" : types))) {
      mkdirSync(dirname(join(app, "node_modules", name)), { recursive: true });
      symlinkSync(join(ROOT, "node_modules", name), join(app, "node_modules", name));
    }
    const examples = readdirSync(join(app, "examples")).filter((name) => name.endsWith(".ts"));
    expect(examples.length).toBeGreaterThan(2);
    const options = ["--module", "nodenext", "--target", "es2023", "--strict", "--types", "node", "--preserveSymlinks"];
    const files = examples.map((name) => join("examples", name));
    expect(run(process.execPath, [TSC, ...options, ...files], app)).toEqual({ status: 0, said: "" });
    for (const name of examples) {
      const program = join("examples", name.replace(/\.ts$/, ".js"));
      const { status, said } = run(process.execPath, ["--preserve-symlinks", "--preserve-symlinks-main", program], app);
      expect({ name, status, spoke: said.trim().length > 10 }).toEqual({ name, status: 0, spoke: true });
      if (name === "fromDemandToReport.ts") expect(said).toMatch(/Drawn anew from the folder it is the same\.\n$/u);
    }
  });

  it("reads a plan from plain JavaScript without files, and says what is missing where the plan names one", () => {
    const plan = JSON.parse(readFileSync(join(installed, "experiments", "plans", "parts", "gate.json"), "utf8"));
    const empirical = { csv: "times.csv", column: "a", unit: "s" };
    plan.supply = { stream: { interarrival: { empirical }, heads: 600 } };
    const source = `import("gambrel").then(({ formatFault, readPlan }) => console.log(readPlan(${JSON.stringify(plan)}).faults.map(formatFault).join()))`;
    expect(run(process.execPath, ["-e", source], app)).toMatchObject({
      status: 0,
      said: expect.stringContaining("no files were given to read from; pass { readText(path) }"),
    });
  });

  it("opens the doors that package.json names, and no others", () => {
    const doors = Object.keys(packageJson.exports).map((door) => door.replace(/^\./, "gambrel"));
    const source = (door: string) =>
      `import(${JSON.stringify(door)}${door.endsWith(".json") ? ', { with: { type: "json" } }' : ""})`;
    for (const door of doors) expect(run(process.execPath, ["-e", source(door)], app)).toMatchObject({ status: 0 });
    expect(run(process.execPath, ["-e", source("gambrel/dist/program/library.js")], app).said).toMatch(
      /ERR_PACKAGE_PATH_NOT_EXPORTED/,
    );
  });
});
