import type { AnswerKey, NewAnswers, NewQuestion } from "./question.ts";
import { NEW_QUESTIONS } from "./questions.ts";

/** Who answers: a person at a terminal, the lines of a file, a form. */
export interface NewAnswerer {
  /** The answer as it was written; "" takes the standard answer. */
  answer(question: NewQuestion, standard: string, answers: NewAnswers): Promise<string> | string;
  /** Told of an answer that cannot be taken: whether the question is asked again. If not, the standard answer stands for it. */
  again(fault: AnswerFault): boolean;
}

export interface AnswerFault {
  key: AnswerKey;
  words: string;
}

export interface NewAsked {
  answers: NewAnswers;
  /** What somebody answered: "heads", and of several figures in one answer each: "people.evisceration". */
  given: ReadonlySet<string>;
  faults: readonly AnswerFault[];
}

/** Asks every question that applies, in order. Every fault of an answer that is not asked for again is kept. */
export async function askNew(answerer: NewAnswerer): Promise<NewAsked> {
  // Each question finds what those before it found; all are there when the last one is answered.
  const answers = {} as NewAnswers;
  const given = new Set<string>();
  const faults: AnswerFault[] = [];
  for (const question of NEW_QUESTIONS) await askOne(question, answerer, { answers, given, faults });
  return { answers, given, faults };
}

interface SoFar {
  answers: NewAnswers;
  given: Set<string>;
  faults: AnswerFault[];
}

async function askOne(question: NewQuestion, answerer: NewAnswerer, { answers, given, faults }: SoFar): Promise<void> {
  const { key } = question;
  const take = (value: unknown) => Object.assign(answers, { [key]: value });
  const standard = question.standard(answers);
  const usual = question.read(standard, answers);
  if ("fault" in usual) throw new Error(`askNew: the standard answer to "${key}" cannot be taken: ${usual.fault}`);
  take(usual.value);
  while (question.applies(answers)) {
    const written = (await answerer.answer(question, standard, answers)).trim();
    if (written === "") return;
    const reading = question.read(written, answers);
    if ("fault" in reading) {
      const fault = { key, words: reading.fault };
      if (answerer.again(fault)) continue;
      faults.push(fault);
      return;
    }
    take(reading.value);
    for (const name of reading.given?.map((each) => `${key}.${each}`) ?? [key]) given.add(name);
    return;
  }
}
