import process from "node:process";
import { createInterface } from "node:readline/promises";
import type { NewAnswerer, NewQuestion } from "../questions/new/index.ts";
import { BadInput, Stopped } from "./faults.ts";
import type { Terminal } from "./terminal.ts";

/** More than any answers have; what comes through a pipe may have no end. */
const MAX_CHARACTERS = 1_000_000;

/** Answers named on the command line stand before all others; one that cannot be taken is left to those others. */
export function withGiven(given: ReadonlyMap<string, string>, others: NewAnswerer): NewAnswerer {
  const left = new Map(given);
  return {
    answer(question, standard, answers) {
      const text = left.get(question.key);
      left.delete(question.key);
      return text ?? others.answer(question, standard, answers);
    },
    again: (fault) => others.again(fault),
  };
}

/** Nobody is asked. */
export const STANDARD_ANSWERS: NewAnswerer = { answer: () => "", again: () => false };

/** One line for each question that applies, an empty one for the usual answer. `left` names what nobody answered or asked. */
export function lineAnswers(lines: readonly string[]): NewAnswerer & { left(): string[] } {
  let next = 0;
  const missing: string[] = [];
  return {
    answer({ key }) {
      if (next >= lines.length) missing.push(key);
      return lines[next++] ?? "";
    },
    again: () => false,
    left() {
      const [first] = missing;
      const short = first === undefined ? [] : [`the answers end before "${first}" (${missing.length} are missing)`];
      const more = lines.length - next;
      return more > 0 ? [`line ${next + 1}: nothing is asked any more; take away what is too much`] : short;
    },
  };
}

/** The lines that come through standard input; without the empty piece after the last one. */
export async function inputLines(): Promise<string[]> {
  let text = "";
  for await (const piece of process.stdin.setEncoding("utf8")) {
    text += piece;
    if (text.length > MAX_CHARACTERS)
      throw new BadInput(["standard input: this is too long for answers, a line each."]);
  }
  return text.replace(/\r?\n$/, "").split(/\r?\n/);
}

/**
 * Asks a person, and again after each answer that cannot be taken. Ctrl-C and the end of input throw `Stopped`.
 * `done` gives the terminal back.
 */
export function personAnswers(
  terminal: Terminal,
  { input, output }: { input: NodeJS.ReadableStream; output: NodeJS.WritableStream },
): NewAnswerer & { done(): void } {
  const lines = createInterface({ input, output });
  const stopped = new AbortController();
  lines.on("SIGINT", () => stopped.abort());
  lines.on("close", () => stopped.abort());
  let group = "";
  return {
    async answer(question, standard, answers) {
      if (question.group !== group) sayGroup(terminal, question);
      group = question.group;
      terminal.say(`  (${question.form(answers)})`, "dim");
      try {
        return await lines.question(`  ${question.words} [${standard}]: `, { signal: stopped.signal });
      } catch (error) {
        if (!stopped.signal.aborted) throw error;
        terminal.say();
        throw new Stopped("SIGINT");
      }
    },
    again({ words }) {
      terminal.say(`  ${words}`, "red");
      return true;
    },
    done: () => lines.close(),
  };
}

function sayGroup(terminal: Terminal, { group }: NewQuestion): void {
  terminal.say();
  terminal.say(group, "bold");
}
