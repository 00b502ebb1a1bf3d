import { mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";
import { builtPage } from "../../../sim/cli/builtPage.ts";
import { pagePath } from "../../support/openPage.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

it("makes one file with script, style, worker and licences in it, that may ask for nothing", async () => {
  const path = await pagePath();
  expect(readdirSync(resolve(path, ".."))).toEqual(["index.html"]);
  const page = readFileSync(path, "utf8");
  // Told as true or false: a page of a megabyte is no message.
  const has = (part: RegExp): boolean => part.test(page);
  expect(
    has(/http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'sha256-[\w+/=]+' blob:;/u),
  ).toBe(true);
  expect(has(/<(script|link|img)[^>]+(src|href)="(?!data:)/u)).toBe(false);
  expect(has(/node:(fs|path|process)/u)).toBe(false);
  const licences = page.slice(page.indexOf('id="licences">'));
  for (const name of ["zod", "preact", "seedrandom", "jstat", "codemirror", "d3-scale"]) {
    expect(new RegExp(`^${name} \\d`, "mu").test(licences), name).toBe(true);
  }
}, 120_000);

it("takes a built page as it is unless a source is newer, and says when it builds", async () => {
  const root = temporaryFolder();
  const said: string[] = [];
  const page = join(root, "dist", "page", "index.html");
  await expect(builtPage(root, () => {})).rejects.toThrow("is the installation whole?");
  mkdirSync(join(root, "dist", "page"), { recursive: true });
  writeFileSync(page, "built");
  // An installed package has no sources.
  expect(await builtPage(root, (line) => said.push(line))).toBe(page);
  mkdirSync(join(root, "viz", "page"), { recursive: true });
  const config = join(root, "viz", "page", "vite.config.ts");
  writeFileSync(config, "export default { no config");
  utimesSync(config, new Date(0), new Date(0));
  for (const folder of ["viz", "viz/page"]) utimesSync(join(root, folder), new Date(0), new Date(0));
  expect(await builtPage(root, (line) => said.push(line))).toBe(page);
  expect(said).toEqual([]);
  utimesSync(config, new Date(), new Date(Date.now() + 1000));
  await expect(builtPage(root, (line) => said.push(line))).rejects.toThrow();
  expect(said).toEqual(["Building the page from its sources: some seconds, once."]);
  expect(readFileSync(page, "utf8")).toBe("built");
  expect(readdirSync(join(root, "dist"))).toEqual(["page"]);
}, 120_000);
