/**
 * The licences of all packages that come with the program, as a table. Write it anew after a change of dependencies:
 *
 *   npx tsx tests/adopt/licences.ts
 */

import { readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { argv } from "node:process";
import { fileURLToPath } from "node:url";

const ROOT = resolve(import.meta.dirname, "../..");
export const TABLE = join(import.meta.dirname, "licences.md");

/** Licences under which a package may be used in a program under the MIT licence without further duties of publication. */
export const PERMISSIVE = new Set([
  "MIT",
  "ISC",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "Apache-2.0",
  "0BSD",
  "BlueOak-1.0.0",
  "Unlicense",
]);

export interface PackageLicence {
  name: string;
  licence: string;
  /** Named in package.json, not by another package. */
  direct: boolean;
}

interface LockedPackage {
  dev?: boolean;
  license?: string;
  dependencies?: Record<string, string>;
  optionalDependencies?: Record<string, string>;
}

/** Every package that npm installs with this one, by name; those of other operating systems included. */
export function packageLicences(): PackageLicence[] {
  const { packages } = JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8")) as {
    packages: Record<string, LockedPackage>;
  };
  const { dependencies, optionalDependencies } = packages[""]!;
  const named = new Set(Object.keys({ ...dependencies, ...optionalDependencies }));
  const found = new Map<string, PackageLicence>();
  for (const [path, about] of Object.entries(packages)) {
    if (path === "" || about.dev === true) continue;
    const name = path.slice(path.lastIndexOf("node_modules/") + "node_modules/".length);
    found.set(`${name} ${about.license}`, { name, licence: about.license ?? olderForm(path), direct: named.has(name) });
  }
  return [...found.values()].toSorted((one, other) => (one.name < other.name ? -1 : 1));
}

/** Old packages name their licences in a list, which the lock file passes over. */
function olderForm(path: string): string {
  const { licenses } = JSON.parse(readFileSync(join(ROOT, path, "package.json"), "utf8"));
  return licenses?.map(({ type }: { type: string }) => type).join(" or ") ?? "none";
}

/** Names of packages, those for development too, that their makers have given up. */
export function abandonedPackages(): string[] {
  const { packages } = JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8"));
  return Object.keys(packages).filter((path) => packages[path].deprecated !== undefined);
}

export function licenceTable(licences: readonly PackageLicence[]): string {
  const rows = licences.map(({ name, licence, direct }) => `| ${direct ? `**${name}**` : name} | ${licence} |`);
  return `# Licences of what comes with the program

Made by \`npx tsx tests/adopt/licences.ts\` from the lock file. Bold: named in package.json; the others come with those. Packages
for development only are not installed with the program and not listed.

| package | licence |
| --- | --- |
${rows.join("\n")}
`;
}

if (argv[1] === fileURLToPath(import.meta.url)) writeFileSync(TABLE, licenceTable(packageLicences()));
