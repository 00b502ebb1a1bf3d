import { z } from "zod";
import type { DaySource } from "../index.ts";
import { parseExactJson } from "../wire/index.ts";
import { type Answer, answerShape } from "./payloads.ts";

const NAMED = z.looseObject({ task: z.string() });

/** Reads what workers send; of an answer that is not as it must be, what is left is which task it was about, if that. */
export function answerReader(source: DaySource): (text: string) => Answer | null {
  const shape = answerShape(source);
  return (text) => {
    const json = parsed(text);
    const whole = shape.safeParse(json);
    if (whole.success) return whole.data;
    const named = NAMED.safeParse(json);
    return named.success ? { task: named.data.task, error: "a worker's answer cannot be read" } : null;
  };
}

function parsed(text: string): unknown {
  try {
    return parseExactJson(text);
  } catch {
    return undefined;
  }
}
