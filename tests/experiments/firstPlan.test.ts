import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, it } from "vitest";
import { readStudy } from "../../sim/asked/study/index.ts";
import { responsesOf } from "../../sim/day/observations/index.ts";
import { runStudy } from "../../sim/days/run/index.ts";
import { formatClock } from "../../sim/text/units/index.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const README = readFileSync(resolve(ROOT, "README.md"), "utf8");
const file = (name: string) => readFileSync(resolve(ROOT, "experiments/first-plan", name), "utf8");

it("stands in the README as it lies in the folder, plan and study", () => {
  const blocks = [...README.matchAll(/```json\n(.*?)```/gs)].map((match) => JSON.parse(match[1]!));
  expect(blocks).toEqual(["first.json", "first-study.json"].map((name) => JSON.parse(file(name))));
});

it("gives what the README says of it, in minutes and money", { timeout: 120_000 }, async () => {
  const { study } = readStudy(
    JSON.parse(file("first-study.json")),
    { readText: file },
    { knownResponses: responsesOf },
  );
  const { variants } = await runStudy(study!, { gambrel: "test", command: "test" });
  const [base, fourth, places] = variants;
  const end = base!.estimates.finish!.mean + base!.day.startClockSeconds;
  const minutesEarlier = (variant: typeof base) => Math.round(-variant!.differences!.finish!.mean / 60);
  const moneyMore = (variant: typeof base) => Math.round(5000 * variant!.differences!.costPerHead!.mean);
  const said = [
    `the day ends at ${formatClock(end)}, ${Math.round(base!.estimates.overtime!.mean / 60)} minutes late`,
    `would end it ${minutesEarlier(fourth)} minutes earlier, but cost ${moneyMore(fourth)} EUR a day more`,
    `end the day ${minutesEarlier(places)} minutes earlier and save ${-moneyMore(places)} EUR a day`,
  ];
  for (const words of said) expect(README.replaceAll("\n", " ")).toContain(words);
  for (const variant of [fourth, places])
    for (const key of ["finish", "costPerHead"]) expect(variant!.differences![key]!.shown).toBe(true);
});
