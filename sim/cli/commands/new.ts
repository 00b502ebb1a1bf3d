import { existsSync } from "node:fs";
import process from "node:process";
import { DANGERS_IN_SHORT } from "../../../viz/report/cautions.ts";
import { NO_FILES, nearestWords } from "../../asked/plan/index.ts";
import { askNew, NEW_QUESTIONS, type NewAsked, newPlan } from "../../questions/new/index.ts";
import { formatNumber } from "../../text/units/index.ts";
import { inputLines, lineAnswers, personAnswers, STANDARD_ANSWERS, withGiven } from "../answering.ts";
import { BadInput, NEW_GUIDE } from "../faults.ts";
import { loadPlanWithWarnings } from "../inputs.ts";
import { CAUTION, type Terminal } from "../terminal.ts";
import { checkNewFile, writeNewFile } from "./size.ts";

export interface NewCommandOptions {
  /** Take the usual answer to whatever is not in `set`. */
  yes?: boolean;
  set?: ReadonlyMap<string, string>;
}

/**
 * Asks for what a plan needs and writes it: a person at a terminal, else the lines of standard input. A file that is
 * there is never replaced.
 */
export async function newCommand(
  terminal: Terminal,
  path: string | undefined,
  options: NewCommandOptions,
): Promise<void> {
  const { set = new Map(), yes = false } = options;
  refuseUnknown(set);
  if (path !== undefined) refuseOld(path);
  const asked = await ask(terminal, set, yes);
  const file = path ?? fileNameOf(asked.answers.name);
  refuseOld(file);
  const json = newPlan(asked);
  const text = `${JSON.stringify(json, null, 2)}\n`;
  const { warnings } = loadPlanWithWarnings({ path: file, text, json, files: NO_FILES });
  writeNewFile(file, text);
  terminal.say();
  for (const warning of warnings) terminal.say(warning, "yellow");
  terminal.say(DANGERS_IN_SHORT.join(" "), "yellow");
  terminal.say(CAUTION, "dim");
  sayWritten(terminal, file, asked);
}

function refuseUnknown(set: ReadonlyMap<string, string>): void {
  const keys: string[] = NEW_QUESTIONS.map(({ key }) => key);
  const unknown = [...set.keys()].filter((key) => !keys.includes(key));
  if (unknown.length === 0) return;
  const words = (key: string) => nearestWords(key, keys, `the questions are ${keys.join(", ")}`);
  throw new BadInput(unknown.map((key) => `--set ${key}: there is no such question; ${words(key)}`));
}

function refuseOld(path: string): void {
  if (existsSync(path)) throw new BadInput([`${path}: this is there already, and is not replaced; name another file.`]);
  checkNewFile(path, false);
}

async function ask(terminal: Terminal, set: ReadonlyMap<string, string>, yes: boolean): Promise<NewAsked> {
  if (yes) return sound(await askNew(withGiven(set, STANDARD_ANSWERS)), set, []);
  if (process.stdin.isTTY) return askPerson(terminal, set);
  const lines = lineAnswers(await inputLines());
  const asked = await askNew(withGiven(set, lines));
  return sound(
    asked,
    set,
    lines.left().map((words) => `standard input: ${words}; a line for each question, or --yes`),
  );
}

async function askPerson(terminal: Terminal, set: ReadonlyMap<string, string>): Promise<NewAsked> {
  terminal.say("Press Enter to take what stands in [ ]: a usual figure, no more than a guess. Ctrl-C leaves nothing.");
  const person = personAnswers(terminal, { input: process.stdin, output: process.stderr });
  try {
    return sound(await askNew(withGiven(set, person)), set, []);
  } finally {
    person.done();
  }
}

/** Refuses all that is wrong at once. */
function sound(asked: NewAsked, set: ReadonlyMap<string, string>, others: readonly string[]): NewAsked {
  const unasked = NEW_QUESTIONS.filter(({ key, applies }) => set.has(key) && !applies(asked.answers));
  const faults = [
    ...asked.faults.map(({ key, words }) => `${key}: ${words}`),
    ...unasked.map(({ key }) => `--set ${key}: this plant has nothing that it speaks of; leave it out.`),
    ...others,
  ];
  if (faults.length > 0) throw new BadInput(faults, [NEW_GUIDE]);
  return asked;
}

/** "Ridge Farm" is written to ridge-farm.json; where that is there already to ridge-farm-2.json: no answer is lost. */
function fileNameOf(name: string): string {
  const words = name.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? ["plan"];
  const base = words.join("-");
  for (let number = 1; ; number++) {
    const file = number === 1 ? `${base}.json` : `${base}-${number}.json`;
    if (!existsSync(file)) return file;
  }
}

function sayWritten(terminal: Terminal, file: string, { answers, given }: NewAsked): void {
  const { lorries, crates, headsPerCrate } = answers;
  const heads = formatNumber(lorries * crates * headsPerCrate, 9);
  const word = /^[\w./-]+$/.test(file) ? file : `"${file}"`;
  terminal.say(`Written: ${file}. Its lorries bring ${heads} heads.`, "green");
  terminal.say(
    given.size === 0
      ? 'No figure in it is yours: replace the guesses by your own. "sources" in the file lists them.'
      : 'What you did not answer is a guess: "sources" in the file says which figure is which.',
  );
  terminal.say("Next:");
  terminal.say(`  gambrel day ${word}                 what one day of it does`);
  terminal.say(`  gambrel why ${word}                 what to change first, and what it is worth`);
  terminal.say(`  gambrel check --responses ${word}   what a study of it can be asked for`);
}
