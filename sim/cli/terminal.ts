import type { EventEmitter } from "node:events";
import pc from "picocolors";
import { visible } from "../text/units/index.ts";
import { SIGNALS, Stopped } from "./faults.ts";

const BAR = 24;

const REWRITE_MS = 100;

const LONGEST_SILENCE_MS = 60_000;

/** Shows how far a run is; `end` must be called before anything else is said. */
interface Progress {
  update(done: number, total: number): void;
  end(): void;
}

export type Style = "plain" | "bold" | "dim" | "red" | "yellow" | "green";

/** Where the program speaks: words for people to standard error, data to standard output. */
export interface Terminal {
  /** One line for people. What would act on the terminal or turn the line
   * round (control characters, direction marks, halves of characters) is shown as "?": words may quote a file. */
  say(line?: string, style?: Style): void;
  /** Replaces the line said last by `rewrite`; "" takes it away. Only where `live`. */
  rewrite(line: string): void;
  data(text: string): void;
  /** People watch: a line can be rewritten. */
  live: boolean;
}

/** A line with how it looks. */
export interface Line {
  line: string;
  style: Style;
}

export function plainLine(line: string): Line {
  return { line, style: "plain" };
}

/** A part of an answer under its title. */
export function section(title: string, lines: readonly string[]): Line[] {
  return [plainLine(""), { line: title, style: "bold" }, ...lines.map(plainLine)];
}

/** "1 day", "3 days", "2 lorries". */
export function counted(number: number, noun: string, plural = `${noun}s`): string {
  return `${number} ${number === 1 ? noun : plural}`;
}

/** The part of the process that a terminal needs. */
export interface ProcessStreams {
  stdout: { write(text: string): unknown };
  stderr: { write(text: string): unknown; isTTY?: boolean };
  env: Record<string, string | undefined>;
}

/** Colours only on a terminal that has them, and none when NO_COLOR is set (no-color.org). */
export function processTerminal({ stdout, stderr, env }: ProcessStreams): Terminal {
  const live = stderr.isTTY === true && env.TERM !== "dumb";
  const colours = pc.createColors(live && !env.NO_COLOR);
  return {
    live,
    say(line = "", style = "plain") {
      const text = printable(line);
      stderr.write(`${style === "plain" ? text : colours[style](text)}\n`);
    },
    rewrite(line) {
      stderr.write(`\r\u001b[K${printable(line)}`);
    },
    data(text) {
      stdout.write(text);
    },
  };
}

/** A thin space groups digits and a true minus stands before them; here ordinary ones do, which every terminal and font has. */
function printable(text: string): string {
  return visible(text.replaceAll("\u202f", " ").replaceAll("\u2212", "-"));
}

/** Said at the end of every run; the report has the cautions in full. */
export const CAUTION =
  "A planning aid built on the numbers it is given; it sets no limit and no setting. Animal welfare and people's safety come first: " +
  "the law at the site, the official veterinarian and licensed practice decide. Verify against the real line.";

/**
 * A bar that rewrites itself on a terminal; elsewhere a plain line at each quarter, and after a minute without one. Of the
 * many small rounds of a search, which says itself what it is at, only that after a minute. `now` in milliseconds; `noun`: what is counted, days or weeks.
 */
export function progress(terminal: Terminal, now: () => number, inRounds = false, noun = "days"): Progress {
  return terminal.live ? bar(terminal, now, noun) : plainLines(terminal, now, { inRounds, noun });
}

/**
 * Says the stages of a search. Without a cursor a line that differs from the one before by its figures alone ("20 of 300
 * tried") is said once a minute at most. `now` in milliseconds.
 */
export function sayingStages(terminal: Terminal, now: () => number): (words: string) => void {
  let stage = "";
  let last = Number.NEGATIVE_INFINITY;
  return (words) => {
    const same = words.replace(/\d+/g, "") === stage;
    if (!terminal.live && same && now() - last < LONGEST_SILENCE_MS) return;
    stage = words.replace(/\d+/g, "");
    last = now();
    terminal.say(words, "dim");
  };
}

function bar(terminal: Terminal, now: () => number, noun: string): Progress {
  const pace = paceSince(now());
  let last = Number.NEGATIVE_INFINITY;
  return {
    update(done, total) {
      const left = pace(done, total, now());
      if (now() - last < REWRITE_MS && done < total) return;
      last = now();
      const filled = Math.round((done / total) * BAR);
      const drawn = "=".repeat(filled) + ".".repeat(BAR - filled);
      const share = `${String(Math.floor((done / total) * 100)).padStart(3)} %`;
      terminal.rewrite(`${drawn} ${share}  ${done} of ${total} ${noun}, ${left}`);
    },
    end() {
      terminal.rewrite("");
    },
  };
}

/** Reading a study takes no longer than this, or says how far it is. */
const PATIENCE_MS = 2000;

/** How far the reading of a study's variants is, from two seconds on: a line that rewrites itself, elsewhere one line. */
export function readingProgress(terminal: Terminal, now: () => number): Progress {
  const start = now();
  let last = start;
  let shown = false;
  return {
    update(done, total) {
      if (now() - start < PATIENCE_MS || (shown && (!terminal.live || now() - last < REWRITE_MS))) return;
      shown = true;
      last = now();
      const words = `${done} of ${total} variants checked`;
      if (terminal.live) terminal.rewrite(words);
      else terminal.say(`${words}; the rest follows`);
    },
    end() {
      if (shown && terminal.live) terminal.rewrite("");
    },
  };
}

function plainLines(
  terminal: Terminal,
  now: () => number,
  { inRounds, noun }: { inRounds: boolean; noun: string },
): Progress {
  const pace = paceSince(now());
  let quarter = 0;
  let last = now();
  return {
    update(done, total) {
      const left = pace(done, total, now());
      const reached = Math.floor((done / total) * 4);
      if ((inRounds || reached === quarter) && now() - last < LONGEST_SILENCE_MS) return;
      quarter = reached;
      last = now();
      terminal.say(`${done} of ${total} ${noun} simulated (${Math.floor((done / total) * 100)} %), ${left}`);
    },
    end() {},
  };
}

/** A run's pace is that of so much of it, at least: variants differ, and a machine may be busy for a while. */
const RECENT_MS = 120_000;
const RECENT_SHARE = 0.1;

/**
 * Words on time gone and time left, at the pace of the last two minutes or the last tenth of the run, whichever is longer. The
 * first update comes before anything is done: days that are there already (a run that is resumed) do not count towards the pace.
 */
function paceSince(start: number): (done: number, total: number, now: number) => string {
  let marks: { done: number; at: number }[] = [];
  return (done, total, now) => {
    if (marks.length === 0) marks.push({ done, at: start });
    const gone = spell((now - start) / 1000);
    const span = Math.max(RECENT_MS, RECENT_SHARE * (now - start));
    // The newest that lies a whole span back is where the pace is taken from.
    const from = Math.max(
      0,
      marks.findLastIndex(({ at }) => now - at >= span),
    );
    marks = marks.slice(from);
    if (now - marks.at(-1)!.at >= span / MAX_MARKS) marks.push({ done, at: now });
    const { done: before, at } = marks[0]!;
    if (done === before || done >= total) return gone;
    return `${gone}, about ${spell(((now - at) / 1000 / (done - before)) * (total - done))} left`;
  };
}

const MAX_MARKS = 60;

function spell(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole < 60) return `${whole} s`;
  const minutes = Math.floor(whole / 60);
  return minutes < 60 ? `${minutes} min ${whole % 60} s` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}

/**
 * Runs work that Ctrl-C (or SIGTERM, or SIGHUP when the terminal is closed) stops at the next opportunity, so that it
 * can leave the disk in order. A second Ctrl-C ends the program at once. What asks for Ctrl-C is said inside `work`:
 * before, nobody would be listening yet.
 */
export async function untilInterrupted<Result>(
  events: EventEmitter,
  work: (signal: AbortSignal) => Promise<Result>,
): Promise<Result> {
  const controller = new AbortController();
  const stops = SIGNALS.map((name) => ({ name, stop: () => controller.abort(new Stopped(name)) }));
  for (const { name, stop } of stops) events.once(name, stop);
  try {
    return await work(controller.signal);
  } finally {
    for (const { name, stop } of stops) events.off(name, stop);
  }
}

/** Waits for the signal; also done when it came before anybody waited. */
export async function interruption(signal: AbortSignal): Promise<void> {
  if (signal.aborted) return;
  await new Promise((resolve) => signal.addEventListener("abort", resolve, { once: true }));
}
