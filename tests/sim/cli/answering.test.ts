import { PassThrough } from "node:stream";
import { setImmediate } from "node:timers/promises";
import { describe, expect, it } from "vitest";
import { lineAnswers, personAnswers, withGiven } from "../../../sim/cli/answering.ts";
import { Stopped } from "../../../sim/cli/faults.ts";
import { askNew } from "../../../sim/questions/new/index.ts";
import { fakeTerminal } from "../../support/fakeTerminal.ts";

/** A person who types these, each when asked for the next answer. */
async function typed(keys: readonly string[]) {
  const input = new PassThrough();
  const shown: string[] = [];
  const output = Object.assign(new PassThrough(), { isTTY: true, columns: 120 });
  output.setEncoding("utf8").on("data", (text: string) => shown.push(text));
  const { terminal, said } = fakeTerminal(true);
  const person = personAnswers(terminal, { input, output });
  const left = [...keys];
  const answering = askNew({
    ...person,
    answer(...asked) {
      const answer = person.answer(...asked);
      input.write(left.shift() ?? "\r");
      return answer;
    },
  });
  const end = await answering.then(
    (asked) => ({ asked, error: null }),
    (error: unknown) => ({ asked: null, error }),
  );
  person.done();
  await setImmediate();
  return { ...end, said, shown: shown.join("") };
}

describe("personAnswers", () => {
  it("shows each question with its usual answer, and takes what is typed", async () => {
    const { asked, shown, said } = await typed(["Ridge\r", "800\r"]);
    expect(asked?.answers).toMatchObject({ name: "Ridge", heads: 800 });
    expect([...asked!.given]).toEqual(["name", "heads"]);
    expect(shown).toContain("Heads a day [1600]: ");
    expect(said.filter((line) => line === "How animals arrive")).toHaveLength(1);
  });

  it("meets a bad answer by one message and asks again", async () => {
    const { asked, said } = await typed(["\r", "many\r", "800\r"]);
    expect(asked?.answers.heads).toBe(800);
    expect(said.filter((line) => line.includes("'many' is not a whole number"))).toHaveLength(1);
  });

  it.each([
    ["Ctrl-C", "\u0003"],
    ["the end of input", "\u0004"],
  ])("ends at %s as stopped", async (_, key) => {
    const { error } = await typed(["Ridge\r", key]);
    expect(error).toBeInstanceOf(Stopped);
  });
});

describe("withGiven", () => {
  it("takes what was given first, and asks the others where that cannot be taken", async () => {
    const told: string[] = [];
    const given = new Map([
      ["heads", "many"],
      ["lorries", "2"],
      ["every", "2 h"],
    ]);
    const { answers } = await askNew(
      withGiven(given, {
        answer: ({ key }) => (key === "heads" ? "700" : ""),
        again: ({ key }) => told.push(key) > 0,
      }),
    );
    expect([answers.heads, answers.lorries, answers.every, told]).toEqual([700, 2, 7200, ["heads"]]);
  });

  it("uses up no line for what was given", async () => {
    const lines = lineAnswers(["Ridge", "06:30"]);
    const asked = await askNew(withGiven(new Map([["heads", "500"]]), lines));
    expect(asked.answers).toMatchObject({ name: "Ridge", heads: 500, start: 6.5 * 3600 });
    expect(lines.left()).toEqual([expect.stringContaining('end before "end"')]);
  });
});
