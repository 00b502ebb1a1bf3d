import { listed, named } from "../../days/decision/index.ts";
import { formatDuration } from "../../text/units/index.ts";
import type { Improvement, Recommendation } from "./improvement.ts";
import type { TimeElement } from "./space.ts";
import { weekMoveWords } from "./week/weekMoveWords.ts";

const NUMBERS = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

const HOUR = 3600;

/** So many that leave an element, or come to it. */
interface Step {
  name: string;
  count: number;
}

/**
 * What has to be done to today's plan, as people say it: "move one each from cut-up, packing and live animals to hanging",
 * "buy “a second skinner”". Arrangements that cannot be set against today's, and what keeps as it is, are told by name.
 */
export function moveWords({ allocated }: Pick<Improvement, "allocated">, { name, counts }: Recommendation): string {
  const { kind, elements } = allocated;
  if (counts === null || elements.some(({ base }) => base === null)) return `arrange it as ${name}`;
  if (kind === "times") return timesWords(elements, counts);
  if (kind === "week") return weekMoveWords(elements, counts);
  const steps = elements.map((element, index) => ({ name: element.name, count: counts[index]! - element.base! }));
  const [to, from] = [steps.filter(({ count }) => count > 0), steps.filter(({ count }) => count < 0).map(turned)];
  if (kind === "budget") return to.length === 0 ? "buy nothing" : `buy ${listed(to.map((step) => named(step.name)))}`;
  const noun =
    kind === "people" ? { one: "person", many: "people", at: "" } : { one: "place", many: "places", at: "before " };
  if (to.length === 0 && from.length === 0) return "leave it as it is";
  if (total(to) === total(from)) return moved(from, to, noun);
  return listed([
    ...(from.length === 0 ? [] : [`take ${each(from, "from", noun)}`]),
    ...(to.length === 0 ? [] : [`add ${each(to, "to", noun)}`]),
  ]);
}

/** "let the lorry “second” come an hour later, at 10:30", "start the shift “day” 30 min earlier, at 05:30". */
function timesWords(elements: Improvement["allocated"]["elements"], counts: readonly number[]): string {
  const moves = elements.flatMap(({ base, time }, index) =>
    counts[index] === base ? [] : [timeMove(time!, base!, counts[index]!)],
  );
  return moves.length === 0 ? "leave it as it is" : listed(moves);
}

function timeMove({ what, of, many, moments, stepSeconds }: TimeElement, from: number, to: number): string {
  const [then, way] = [moments[to]!, to > from ? "later" : "earlier"];
  const by = spanWords(Math.abs(to - from) * stepSeconds);
  if (what === "gap") return `let the lorries of ${named(of)} come every ${then} instead of every ${moments[from]!}`;
  if (what === "load" && many) return `let the lorries of ${named(of)} come ${by} ${way}, the first at ${then}`;
  if (what === "load") return `let the lorry ${named(of)} come ${by} ${way}, at ${then}`;
  if (what === "shift") return `start the shift ${named(of)} ${by} ${way}, at ${then}`;
  return `begin ${named(of)} ${by} ${way}, at ${then}`;
}

function spanWords(seconds: number): string {
  return seconds === HOUR ? "an hour" : formatDuration(seconds);
}

interface Noun {
  one: string;
  many: string;
  /** Stands before the name of an element. */
  at: string;
}

/** As many leave as come: one sentence for both. */
function moved(from: readonly Step[], to: readonly Step[], noun: Noun): string {
  const left = each(from, "from", noun);
  if (to.length === 1) return `move ${left}${from.length > 1 ? "," : ""} to ${noun.at}${to[0]!.name}`;
  if (isEven(from) && isEven(to) && from.length === to.length)
    return `move ${left}, to ${listed(to.map(({ name }) => `${noun.at}${name}`))}`;
  return `move ${left}, ${each(to, "to", noun, false)}`;
}

/** "two people from A", "one each from A, B and C", "two people from A and one from B". */
function each(steps: readonly Step[], word: "from" | "to", noun: Noun, withNoun = true): string {
  const [first] = steps;
  if (steps.length > 1 && isEven(steps)) {
    const places = `${word} ${listed(steps.map(({ name }) => `${noun.at}${name}`))}`;
    return `${numberWord(first!.count)}${withNoun && first!.count > 1 ? ` ${noun.many}` : ""} each ${places}`;
  }
  const parts = steps.map(({ name, count }, index) => {
    const what = index === 0 && withNoun ? ` ${count === 1 ? noun.one : noun.many}` : "";
    return `${numberWord(count)}${what} ${word} ${noun.at}${name}`;
  });
  return listed(parts);
}

function isEven(steps: readonly Step[]): boolean {
  return steps.every(({ count }) => count === steps[0]!.count);
}

function numberWord(count: number): string {
  return NUMBERS[count] ?? String(count);
}

function turned({ name, count }: Step): Step {
  return { name, count: -count };
}

function total(steps: readonly Step[]): number {
  return steps.reduce((sum, { count }) => sum + count, 0);
}
