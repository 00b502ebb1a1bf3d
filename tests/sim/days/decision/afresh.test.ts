import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { expect, it } from "vitest";
import { readStudy } from "../../../../sim/asked/study/index.ts";
import { runStudy } from "../../../../sim/days/run/index.ts";

const FOLDER = resolve(import.meta.dirname, "../../../../experiments/studies");
const DAYS = 4;

/** Days of another seed than the study's: what it tells must not hang on its own. */
it("the example that asks where the bottleneck goes names the same stations on days of another seed", async () => {
  const readText = (name: string) => readFileSync(resolve(FOLDER, name), "utf8");
  const { study } = readStudy(JSON.parse(readText("moving-bottleneck.json")), { readText });
  const { decision } = await runStudy(
    { ...study!, seed: "afresh", replications: DAYS },
    { gambrel: "1", command: "c" },
  );
  expect(decision!.kind).toBe("bottleneck");
  expect(decision!.verdict).toMatch(
    /^The bottleneck today is evisceration \(.*“2 eviscerators” it stays there; with “4 eviscerators” it moves to pre-loosening/,
  );
});
