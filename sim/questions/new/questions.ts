import { formatNumber, readClock, readMoneyRate, readQuantity, time, writeClock } from "../../text/units/index.ts";
import { assumedValue } from "../size/index.ts";
import { liveHandlers } from "./liveHandlers.ts";
import type { AnswerKey, AnswerReading, NewAnswers, NewQuestion, Pause } from "./question.ts";
import {
  choiceAnswer,
  clockAnswer,
  namedAnswer,
  partsOf,
  timeAnswer,
  wholeAnswer,
  writeNamed,
  writeTime,
} from "./readAnswer.ts";
import {
  isMachine,
  LATER_STEPS,
  meanSeconds,
  neededPositions,
  USUAL_LATER_STEPS,
  usualSeconds,
  usualStep,
  WATCHED,
  workedSteps,
} from "./usualFigures.ts";

const MINUTE = 60;
const HOUR = 3600;
const MAX_HEADS = 100_000;
const MAX_PEOPLE = 64;
const MAX_LORRIES = 200;
const SHORTEST_SHIFT = HOUR;
/** Who comes back from a break needs this much of the shift still. */
const AFTER_BREAK = 15 * MINUTE;
const WAYS = ["hand-slid", "lift", "automatic"] as const;
const PAY = "18 EUR/h";
const always = () => true;

function question<Key extends AnswerKey>(asked: NewQuestion<Key>): NewQuestion {
  return asked as unknown as NewQuestion;
}

/** In the order in which they are asked; a standard answer may build on the answers before it. */
export const NEW_QUESTIONS: readonly NewQuestion[] = [
  question({
    key: "name",
    group: "The plant and its day",
    words: "Name of the plant",
    form: () => "1 to 60 characters",
    applies: always,
    standard: () => "My plant",
    read: readName,
  }),
  question({
    key: "heads",
    group: "The plant and its day",
    words: "Heads a day",
    form: () => "a whole number, such as 1600",
    applies: always,
    standard: () => "1600",
    read: (text) => wholeAnswer(text, 1, MAX_HEADS),
  }),
  question({
    key: "start",
    group: "The plant and its day",
    words: "The shift starts at",
    form: () => "a time of day, such as 06:00",
    applies: always,
    standard: () => "06:00",
    read: readStart,
  }),
  question({
    key: "end",
    group: "The plant and its day",
    words: "The shift ends at",
    form: () => "a time of day, such as 14:30; 25:30 is half past one at night",
    applies: always,
    standard: ({ start }) => writeClock(start + 8.5 * HOUR),
    read: readEnd,
  }),
  question({
    key: "breaks",
    group: "The plant and its day",
    words: "Breaks",
    form: () => 'start and length of each, such as "09:00 15 min, 12:00 30 min", or none',
    applies: always,
    standard: usualBreaks,
    read: readBreaks,
  }),
  question({
    key: "lorries",
    group: "How animals arrive",
    words: "Lorries a day",
    form: () => "a whole number",
    applies: always,
    standard: ({ heads }) => String(Math.min(MAX_LORRIES, Math.max(1, Math.ceil(heads / headsOnLorry())))),
    read: (text) => wholeAnswer(text, 1, MAX_LORRIES),
  }),
  question({
    key: "firstLorry",
    group: "How animals arrive",
    words: "The first lorry comes at",
    form: () => "a time of day, such as 05:20",
    applies: always,
    standard: ({ start }) => writeClock(Math.max(0, start - meanSeconds(assumedValue("crates.lead")))),
    read: readFirstLorry,
  }),
  question({
    key: "every",
    group: "How animals arrive",
    words: "Then a lorry every",
    form: () => "a time, such as 75 min",
    applies: ({ lorries }) => lorries > 1,
    standard: usualEvery,
    read: readEvery,
  }),
  question({
    key: "headsPerCrate",
    group: "How animals arrive",
    words: "Heads in a crate",
    form: () => "a whole number",
    applies: always,
    standard: () => String(assumedValue("crates.headsPerCrate")),
    read: (text) => wholeAnswer(text, 1, 1000),
  }),
  question({
    key: "crates",
    group: "How animals arrive",
    words: "Crates on a lorry",
    form: () => "a whole number",
    applies: always,
    standard: (answers) => String(cratesFor(answers)),
    read: readCrates,
  }),
  question({
    key: "handling",
    group: "How animals arrive",
    words: "How crates are handled",
    form: () => "hand-slid (on rollers), lift (brings the crate up), or automatic (destacking)",
    applies: always,
    standard: () => "hand-slid",
    read: (text) => choiceAnswer(text, WAYS),
  }),
  question({
    key: "handlers",
    group: "How animals arrive",
    words: "People at the crates, from lorry to washer",
    form: () => "a whole number",
    applies: always,
    standard: (answers) => String(Math.min(MAX_PEOPLE, liveHandlers(answers))),
    read: (text) => wholeAnswer(text, 1, MAX_PEOPLE),
  }),
  question({
    key: "steps",
    group: "The line",
    words: "Steps after hanging, stunning, sticking and bleeding",
    form: () => `a list of ${LATER_STEPS.join(", ")}`,
    applies: always,
    standard: () => USUAL_LATER_STEPS.join(", "),
    read: readSteps,
  }),
  question({
    key: "skinning",
    group: "The line",
    words: "Skinning by machine or by hand",
    form: () => "machine or hand",
    applies: ({ steps }) => steps.includes("skinning"),
    standard: () => "machine",
    read: (text) => choiceAnswer(text, ["machine", "hand"]),
  }),
  question({
    key: "bleeding",
    group: "The line",
    words: "Bleeding time (the law at the site and the official veterinarian say how long)",
    form: () => "a time, such as 150 s",
    applies: always,
    standard: () => writeTime(meanSeconds(usualStep("bleeding").json.dwell)),
    read: (text) => timeAnswer(text, "150 s", HOUR),
  }),
  question({
    key: "seconds",
    group: "The line",
    words: "Time a head takes at each step",
    form: () => 'those that you know, such as "evisceration 18 s, hanging 13 s"; the others stay',
    applies: always,
    standard: (answers) => writeNamed(usualTimes(answers), (seconds) => `${seconds} s`),
    read: (text, answers) => namedAnswer(text, usualTimes(answers), (each) => timeAnswer(each, "18 s", HOUR)),
  }),
  question({
    key: "people",
    group: "The line",
    words: "People at each step that is worked by hand",
    form: () => 'those that you know, such as "evisceration 3, hanging 2"; the others stay',
    applies: always,
    standard: (answers) => writeNamed(usualPeople(answers), String),
    read: (text, answers) => namedAnswer(text, usualPeople(answers), (each) => wholeAnswer(each, 1, MAX_PEOPLE)),
  }),
  question({
    key: "breakdowns",
    group: "The line",
    words: "Do machines break down",
    form: () => "yes or no; with yes, one person repairs",
    applies: hasStops,
    standard: () => "yes",
    read: readYes,
  }),
  question({
    key: "pay",
    group: "Money and time limits",
    words: "What one person costs",
    form: () => `money an hour, such as ${PAY}, or none`,
    applies: always,
    standard: () => PAY,
    read: readPay,
  }),
  question({
    key: "limits",
    group: "Money and time limits",
    words: "Time limits to watch (check them against the law at the site and with the official veterinarian)",
    form: () => 'those that differ, such as "kill to chill 40 min, arrival to stunning none"; the others stay',
    applies: always,
    standard: (answers) => writeNamed(usualLimits(answers), (seconds) => writeTime(seconds!)),
    read: (text, answers) => namedAnswer(text, usualLimits(answers), readLimit),
  }),
];

function readName(text: string): AnswerReading<string> {
  const long = [...text].length > 60;
  return text === "" || long
    ? { fault: `a name has 1 to 60 characters, this one ${[...text].length}` }
    : { value: text };
}

function readStart(text: string): AnswerReading<number> {
  const reading = clockAnswer(text);
  if ("fault" in reading || reading.value < 24 * HOUR) return reading;
  return { fault: `${text} is on the next day; start before 24:00` };
}

function readEnd(text: string, { start }: NewAnswers): AnswerReading<number> {
  const reading = clockAnswer(text);
  if ("fault" in reading) return reading;
  const length = reading.value - start;
  if (length >= SHORTEST_SHIFT && length <= 24 * HOUR) return reading;
  return {
    fault: `from ${writeClock(start)} to ${text} is not 1 to 24 hours; after midnight count on, 25:30 is half past one`,
  };
}

/** Early and in the middle, in a shift that is long enough. */
function usualBreaks({ start, end }: NewAnswers): string {
  const breaks = [
    { at: start + 3 * HOUR, seconds: 15 * MINUTE },
    { at: start + 6 * HOUR, seconds: 30 * MINUTE },
  ].filter(({ at, seconds }) => at + seconds + HOUR <= end);
  if (breaks.length === 0) return "none";
  return breaks.map(({ at, seconds }) => `${writeClock(at)} ${writeTime(seconds)}`).join(", ");
}

function readBreaks(text: string, { start, end }: NewAnswers): AnswerReading<Pause[]> {
  if (/^none$/i.test(text)) return { value: [] };
  const breaks: Pause[] = [];
  for (const part of partsOf(text)) {
    const [, clock = "", length = ""] = /^(\S+)\s+(.+)$/.exec(part) ?? [];
    const at = readClock(/^\d:/.test(clock) ? `0${clock}` : clock).value;
    const seconds = readQuantity(time, length).value;
    if (at === null || seconds === null || seconds <= 0)
      return { fault: `'${part}' is not the start and length of a break; write for example 09:00 15 min` };
    const before = breaks.at(-1);
    if (before !== undefined && at < before.at + before.seconds)
      return { fault: `the break at ${clock} begins before the one before it is over; write them in order` };
    if (at <= start || at + seconds + AFTER_BREAK > end)
      return {
        fault: `the break at ${clock} does not lie inside the shift from ${writeClock(start)} to ${writeClock(end)}, with a quarter of an hour of work after it`,
      };
    breaks.push({ at, seconds });
  }
  if (breaks.length === 0) return { fault: "this names no break; write for example 09:00 15 min, or none" };
  if (breaks.reduce((sum, { seconds }) => sum + seconds, 0) > (end - start) / 2)
    return { fault: "the breaks take more than half of the shift; shorten them" };
  return { value: breaks };
}

function headsOnLorry(): number {
  return Number(assumedValue("crates.perLorry")) * Number(assumedValue("crates.headsPerCrate"));
}

function readFirstLorry(text: string, { end }: NewAnswers): AnswerReading<number> {
  const reading = clockAnswer(text);
  if ("fault" in reading || reading.value < end) return reading;
  return { fault: `at ${text} the shift is over; it ends at ${writeClock(end)}` };
}

/** Evenly over the shift, in whole five minutes. */
function usualEvery({ start, end, lorries, firstLorry }: NewAnswers): string {
  const longest = (end - firstLorry) / lorries;
  const even = Math.floor(Math.min(longest, (end - start) / lorries) / (5 * MINUTE)) * 5 * MINUTE;
  return writeTime(even > 0 ? even : Math.max(1, Math.floor(longest)));
}

function readEvery(text: string, { firstLorry, lorries, end }: NewAnswers): AnswerReading<number> {
  const reading = timeAnswer(text, "75 min", 24 * HOUR);
  if ("fault" in reading) return reading;
  const last = firstLorry + (lorries - 1) * reading.value;
  if (last < end) return reading;
  return {
    fault: `the last of ${lorries} lorries would come at ${writeClock(last)}, and the shift ends at ${writeClock(end)}`,
  };
}

function cratesFor({ heads, lorries, headsPerCrate }: NewAnswers): number {
  return Math.max(1, Math.min(10_000, Math.ceil(heads / (lorries * headsPerCrate))));
}

function readCrates(text: string, answers: NewAnswers): AnswerReading<number> {
  const reading = wholeAnswer(text, 1, 10_000);
  if ("fault" in reading) return reading;
  const { heads, lorries, headsPerCrate } = answers;
  const brought = lorries * reading.value * headsPerCrate;
  if (Math.abs(brought - heads) <= Math.max(lorries * headsPerCrate, heads / 10)) return reading;
  return {
    fault: `${lorries} ${lorries === 1 ? "lorry" : "lorries"} with ${reading.value} crates of ${headsPerCrate} heads would bring ${formatNumber(brought, 9)} heads, not ${formatNumber(heads, 9)}; ${cratesFor(answers)} crates on a lorry would do`,
  };
}

function readSteps(text: string): AnswerReading<string[]> {
  const named: string[] = [];
  for (const part of partsOf(text)) {
    const reading = choiceAnswer(part, LATER_STEPS);
    if ("fault" in reading) return reading;
    named.push(reading.value);
  }
  if (named.length === 0) return { fault: "this names no step; name one at least" };
  return { value: LATER_STEPS.filter((name) => named.includes(name)) };
}

function usualTimes(answers: NewAnswers): Record<string, number> {
  return Object.fromEntries(workedSteps(answers).map((name) => [name, usualSeconds(name, answers)]));
}

function usualPeople(answers: NewAnswers): Record<string, number> {
  const byHand = workedSteps(answers).filter((name) => !isMachine(name, answers));
  return Object.fromEntries(byHand.map((name) => [name, Math.min(MAX_PEOPLE, neededPositions(name, answers))]));
}

/** Of the steps and the ways to handle crates, those whose usual figures have stops. */
function hasStops(answers: NewAnswers): boolean {
  return answers.handling !== "hand-slid" || workedSteps(answers).some((name) => isMachine(name, answers));
}

function readYes(text: string): AnswerReading<boolean> {
  const reading = choiceAnswer(/^[yn]$/i.test(text) ? { y: "yes", n: "no" }[text.toLowerCase()]! : text, ["yes", "no"]);
  return "fault" in reading ? reading : { value: reading.value === "yes" };
}

function readPay(text: string): AnswerReading<string | null> {
  if (/^none$/i.test(text)) return { value: null };
  const { value } = readMoneyRate(text);
  return value === null
    ? { fault: `'${text}' is not money an hour with its currency; write for example ${PAY}, or none` }
    : { value: text };
}

function usualLimits({ steps }: NewAnswers): Record<string, number | null> {
  const has = (name: string) => !LATER_STEPS.includes(name) || steps.includes(name);
  const watched = Object.entries(WATCHED).filter(([, { needs }]) => has(needs));
  return Object.fromEntries(watched.map(([name, { seconds }]) => [name, seconds]));
}

function readLimit(text: string): AnswerReading<number | null> {
  return /^none$/i.test(text) ? { value: null } : timeAnswer(text, "25 min", 24 * HOUR);
}
