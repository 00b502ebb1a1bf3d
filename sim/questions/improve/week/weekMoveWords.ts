import { listed, named } from "../../../days/decision/index.ts";
import { formatDuration } from "../../../text/units/index.ts";
import type { Improvement } from "../improvement.ts";
import type { TimeElement } from "../space.ts";

type Elements = Improvement["allocated"]["elements"];

/** One thing that is otherwise: what it is, on which day, from which of its moments to which. */
interface Move {
  time: TimeElement;
  from: number;
  to: number;
}

const NUMBERS = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/**
 * What has to be done to the week as it is, day by day where it is of hours, all days of a crew together where it is of people: "let the last two
 * lorries of “Birch” come on Friday instead of Thursday and have one person fewer at evisceration on Monday and Friday".
 */
export function weekMoveWords(elements: Elements, counts: readonly number[]): string {
  const moves = elements.flatMap(({ base, time }, index): Move[] =>
    counts[index] === base || time === undefined ? [] : [{ time, from: base!, to: counts[index]! }],
  );
  const people = moves.filter(({ time }) => time.what === "people");
  const others = moves.filter((move) => !people.includes(move)).map(moveWords);
  const words = [...others, ...peopleWords(people)];
  return words.length === 0 ? "leave it as it is" : listed(words);
}

function moveWords({ time, from, to }: Move): string {
  const { what, of, many, moments, stepSeconds, on } = time;
  const then = moments[to]!;
  const by = `${formatDuration(Math.abs(to - from) * stepSeconds)} ${to > from ? "later" : "earlier"} on ${on}`;
  const lorries = many ? `the lorries of ${named(of)}` : `the lorry ${named(of)}`;
  if (what === "day") return `let ${lorriesWords(time)} come on ${then} instead of ${on}`;
  if (what === "gap") return `let ${lorries} on ${on} come every ${then} instead of every ${moments[from]!}`;
  if (what === "load") return `let ${lorries} come ${by}, ${many ? "the first " : ""}at ${then}`;
  if (what === "shift") return `start the shift ${named(of)} ${by}, at ${then}`;
  return `begin ${named(of)} ${by}, at ${then}`;
}

function lorriesWords({ of, many, lorries = 0 }: TimeElement): string {
  if (lorries === 0) return many ? `the lorries of ${named(of)}` : `the lorry ${named(of)}`;
  return lorries === 1 ? `the last lorry of ${named(of)}` : `the last ${numberWord(lorries)} lorries of ${named(of)}`;
}

/** Crews that have as many more or fewer on several days stand once. */
function peopleWords(moves: readonly Move[]): string[] {
  const groups = new Map<string, string[]>();
  for (const { time, from, to } of moves) {
    const key = `${change(to - from)} at ${time.of}`;
    groups.set(key, [...(groups.get(key) ?? []), time.on!]);
  }
  return [...groups].map(([words, days]) => `have ${words} on ${listed(days)}`);
}

function change(by: number): string {
  const count = Math.abs(by);
  return `${numberWord(count)} ${count === 1 ? "person" : "people"} ${by > 0 ? "more" : "fewer"}`;
}

function numberWord(count: number): string {
  return NUMBERS[count] ?? String(count);
}
