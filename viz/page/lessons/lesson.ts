import type { Moves } from "../plan/control.ts";

/** A guided demonstration: a plan, a question to ask the room, a control to move and what to look for. */
export interface Lesson {
  /** File name without its ending; names the lesson in links. */
  id: string;
  title: string;
  /** What the line is, in two or three sentences. */
  about: string;
  question: string;
  /** What people can answer before they see it. */
  options: string[];
  /** Which of the options comes true. */
  right: number;
  /** Controls that the lesson shows, by their ids. */
  controls: string[];
  /** What is moved, step by step; each begins with the plan as it is. */
  steps: { say: string; moves: Moves }[];
  /** What to look for on the rail and below it. */
  watch: string[];
  /** Keys of the responses that show it; their figures stand beside the answer. */
  evidence: string[];
  answer: string;
  /** Clock time to look at first, and how fast to play. */
  startAt: string;
  speed: number;
  /** Text of its plan file. */
  plan: string;
}
