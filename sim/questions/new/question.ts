import type { Way } from "../../asked/plan/index.ts";

/** What a plan is made of. Times in seconds, clock times in seconds after midnight. */
export interface NewAnswers {
  name: string;
  heads: number;
  start: number;
  end: number;
  breaks: readonly Pause[];
  lorries: number;
  firstLorry: number;
  every: number;
  headsPerCrate: number;
  crates: number;
  handling: Way;
  handlers: number;
  steps: readonly string[];
  skinning: "machine" | "hand";
  bleeding: number;
  /** By step. */
  seconds: Readonly<Record<string, number>>;
  /** By step that is worked by hand. */
  people: Readonly<Record<string, number>>;
  breakdowns: boolean;
  /** "18 EUR/h", or null. */
  pay: string | null;
  /** By limit; null is not watched. */
  limits: Readonly<Record<string, number | null>>;
}

export interface Pause {
  at: number;
  seconds: number;
}

export type AnswerKey = keyof NewAnswers;

/** An answer as it was understood, or what is wrong with it and what to write. */
export type AnswerReading<Value> =
  | { value: Value /** Of several figures in one answer: those that were given. */; given?: readonly string[] }
  | { fault: string };

/**
 * One question as data: a terminal asks it, a page can make a field of it. `answers` holds what the questions before
 * it found.
 */
export interface NewQuestion<Key extends AnswerKey = AnswerKey> {
  key: Key;
  group: string;
  words: string;
  /** How an answer is written. */
  form(answers: NewAnswers): string;
  applies(answers: NewAnswers): boolean;
  /** What stands where nobody answers, as one would write it. */
  standard(answers: NewAnswers): string;
  read(text: string, answers: NewAnswers): AnswerReading<NewAnswers[Key]>;
}
