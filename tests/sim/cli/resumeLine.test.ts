import { expect, it } from "vitest";
import { resumeLine } from "../../../sim/cli/resumeLine.ts";

it("repeats what was given, and nothing else, with --resume", () => {
  expect(resumeLine("study", "a b.json", {})).toBe("gambrel study 'a b.json' --resume");
  expect(resumeLine("improve", "i.json", { out: "o" })).toBe("gambrel improve i.json --out o --resume");
  const all = {
    seed: "x y",
    replications: 3,
    traces: "exact" as const,
    verify: true,
    out: "o",
    overwrite: true,
    json: true,
    ceiling: { events: 5 },
  };
  expect(resumeLine("study", "s.json", { ...all, threads: 2 })).toBe(
    "gambrel study s.json --seed 'x y' --replications 3 --traces exact --verify --out o --threads 2 --ceiling events=5 --overwrite --json --resume",
  );
});

it("leaves the password of a queue out", () => {
  expect(resumeLine("study", "s.json", { queue: "redis://u:secret@h:1" })).toBe(
    "gambrel study s.json --queue redis://u@h:1 --resume",
  );
});
