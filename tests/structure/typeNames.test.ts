import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");
const DECLARED = /^export (?:declare )?(?:interface|type|class|abstract class|enum) (\w+)/gmu;
/** `export { type Inner as Outer }`: a second name for one thing, or one name for a second thing. */
const RENAMED = /\btype (\w+) as (\w+)/gu;

/** Names that two things still share, each with its reason. */
const SHARED: Record<string, string> = {
  Pace: "a row of the plan, and the clock that walks along these rows while a day runs: the engine's own rooms rename it",
};

function files(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/u.test(name) && !name.endsWith(".d.ts"))
    .map((name) => join(folder, name));
}

it.each(["sim", "viz"])("no two exported types of %s share a name", (top) => {
  const places = new Map<string, string[]>();
  for (const file of files(top))
    for (const [, name] of readFileSync(join(ROOT, file), "utf8").matchAll(DECLARED))
      places.set(name!, [...(places.get(name!) ?? []), file]);
  expect(places.size).toBeGreaterThan(100);
  const shared = [...places].filter(([name, where]) => where.length > 1 && !Object.hasOwn(SHARED, name));
  expect(shared).toEqual([]);
  const needless = Object.keys(SHARED).filter((name) => top === "sim" && (places.get(name)?.length ?? 0) < 2);
  expect(needless, "take these names off the list of exceptions").toEqual([]);
});

it("no door gives a type another name than the one it has inside", () => {
  const found = [...files("sim"), ...files("viz")]
    .filter((file) => file.endsWith("index.ts"))
    .flatMap((file) =>
      [...readFileSync(join(ROOT, file), "utf8").matchAll(RENAMED)].map(([words]) => `${file}: ${words}`),
    );
  expect(found).toEqual([]);
});

it("every heading in a door stands apart from the names below it, so that the formatter cannot carry it elsewhere", () => {
  const doors = [...files("sim"), ...files("viz")].filter((file) => file.endsWith("index.ts"));
  expect(doors.length).toBeGreaterThan(20);
  const carried = doors.flatMap((file) =>
    [...readFileSync(join(ROOT, file), "utf8").matchAll(/^\/\/ .*\nexport/gmu)].map(([words]) => `${file}: ${words}`),
  );
  expect(carried).toEqual([]);
});
