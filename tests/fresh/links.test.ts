import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");
const SKIPPED = ["node_modules", "dist", "runs", ".git"];

function documents(folder = ""): string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return SKIPPED.includes(entry.name) ? [] : documents(path);
    return entry.name.endsWith(".md") ? [path] : [];
  });
}

it("every relative link and picture in the written documentation leads somewhere", () => {
  const links = documents().flatMap((document) => {
    const text = readFileSync(join(ROOT, document), "utf8").replaceAll(/```.*?```/gs, "");
    return [...text.matchAll(/\]\(([^)#\s]+)(#[^)]*)?\)/g)].map((match) => ({ document, target: match[1]! }));
  });
  const local = links.filter(({ target }) => !/^[a-z]+:/.test(target));
  expect(local.length).toBeGreaterThan(5);
  const broken = local.filter(({ document, target }) => !existsSync(join(ROOT, dirname(document), target)));
  expect(broken).toEqual([]);
});
