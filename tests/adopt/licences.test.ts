import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import packageJson from "../../package.json" with { type: "json" };
import { abandonedPackages, PERMISSIVE, packageLicences, TABLE } from "./licences.ts";

const LICENCES = packageLicences();

describe("dependencies", () => {
  it("all have a licence that goes with the project's own", () => {
    expect(LICENCES.length).toBeGreaterThan(50);
    expect(LICENCES.filter(({ licence }) => !PERMISSIVE.has(licence))).toEqual([]);
  });

  it("are listed with their licences (else: npx tsx tests/adopt/licences.ts)", () => {
    const text = readFileSync(TABLE, "utf8");
    const listed = [...text.matchAll(/^\| (\*\*)?([^|* ]+)(?:\*\*)? +\| ([^|]+?) +\|$/gm)]
      .map(([, bold, name, licence]) => ({ name, licence, direct: bold !== undefined }))
      .filter(({ name }) => name !== "package" && !name!.startsWith("-"));
    expect(listed).toEqual(LICENCES);
  });

  it("are none that their makers have given up", () => {
    expect(abandonedPackages()).toEqual([]);
  });

  it("each have their reason in the README of this folder", () => {
    const text = readFileSync(resolve(import.meta.dirname, "README.md"), "utf8");
    const words = new Set(text.split(/[\s|,();`]+/));
    const { dependencies, devDependencies, optionalDependencies } = packageJson;
    const missing = Object.keys({ ...dependencies, ...devDependencies, ...optionalDependencies }).filter(
      (name) => !words.has(name) && !words.has(name.replace(/^@types\//, "")),
    );
    expect(missing).toEqual([]);
  });
});
