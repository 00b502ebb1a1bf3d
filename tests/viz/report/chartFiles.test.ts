import { expect, test } from "vitest";
import { chartFiles } from "../../../viz/index.ts";
import { syntheticSingleDay, syntheticStudy } from "../../support/syntheticStudy.ts";

test("every picture of a study is a file of its own with a plain, unique name", () => {
  const files = chartFiles(syntheticStudy());
  const names = files.map((file) => file.name);
  expect(new Set(names).size).toBe(names.length);
  for (const name of names) expect(name).toMatch(/^[a-z0-9-]+$/);
  expect(names).toEqual(
    expect.arrayContaining(["response-1-throughput", "base-queues", "base-limit-1-stun-to-stick", "furthest-states"]),
  );
});

test("a file stands alone: name space, no outside resource, no variable that only a browser knows", () => {
  for (const { svg } of chartFiles(syntheticStudy())) {
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(svg.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|var\(|<script|<image|@import/);
  }
});

test("asked for auto, a file carries the style sheet that it needs", () => {
  for (const { svg } of chartFiles(syntheticSingleDay(), { theme: "auto" }))
    expect(svg).toContain("prefers-color-scheme: dark");
});

test("a single day has no picture of responses, for it has no interval", () => {
  const names = chartFiles(syntheticSingleDay()).map((file) => file.name);
  expect(names.filter((name) => /^(response|difference|furthest)/.test(name))).toEqual([]);
  expect(names).toContain("base-heads-out");
});
