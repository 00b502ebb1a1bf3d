import { PassThrough } from "node:stream";
import { setImmediate } from "node:timers/promises";
import { describe, expect, it } from "vitest";
import { personAnswers } from "../../../sim/cli/answering.ts";
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
