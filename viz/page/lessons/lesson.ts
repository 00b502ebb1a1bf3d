import { z } from "zod";

const sentence = z.string().min(1).max(1500);
const moves = z.record(z.string(), z.number());

/** A guided demonstration: a plan, a question to ask the room, a control to move and what to look for. */
const shape = z.strictObject({
  title: z.string().min(1).max(60),
  /** Path of its plan file, from the lesson's folder. */
  plan: z.string().regex(/^plans\/[\w-]+\.json$/u),
  /** What the line is, in two or three sentences. */
  about: sentence,
  question: sentence,
  /** What people can answer before they see it, and which of them comes true. */
  options: z.array(sentence).min(2).max(6),
  right: z.int().min(0),
  /** Controls that the lesson shows, by their ids. */
  controls: z.array(z.string()).min(1),
  /** What is moved, step by step; each begins with today's plan. */
  steps: z.array(z.strictObject({ say: sentence, moves })).min(1),
  /** The step that the question asks about: the figures beside the answer are of it. */
  askedStep: z.int().min(0),
  /** What to look for on the rail and below it. */
  watch: z.array(sentence).min(1),
  /** Keys of the responses that show it; their figures stand beside the answer. */
  evidence: z.array(z.string()).min(1),
  answer: sentence,
  /** Clock time to look at first, and how fast to play. */
  startAt: z.string().regex(/^\d\d:\d\d$/u),
  speed: z.number(),
});

export interface Lesson extends z.infer<typeof shape> {
  /** File name without its ending; names the lesson in links. */
  id: string;
}

/** Reads a lesson file; throws (a lesson comes with the program) when it is not sound. */
export function readLesson(id: string, text: string): Lesson {
  const lesson = shape.parse(JSON.parse(text));
  if (lesson.right >= lesson.options.length)
    throw new Error(`lesson ${id}: "right" is ${lesson.right}, beyond the options`);
  if (lesson.askedStep >= lesson.steps.length)
    throw new Error(`lesson ${id}: "askedStep" is ${lesson.askedStep}, beyond the steps`);
  return { ...lesson, id };
}
