import type { Plan } from "../../asked/plan/index.ts";
import type { Procedure, Study } from "../../asked/study/index.ts";
import {
  bindingKeys,
  cutShortKeys,
  killLineKeys,
  type ResponseInfo,
  responsesOf,
  usualResponses,
} from "../../day/observations/index.ts";
import { decisionKeys } from "../decision/index.ts";
import { MAX_EVENTS } from "./ceilings.ts";

/**
 * How much of the course of first days is kept: nothing; bins that lose no peak, or every step, of the variants whose day
 * is drawn; or bins of every variant, each day record whole.
 */
export type TraceKind = "none" | "binned" | "exact" | "all";

/** What a traced day is asked to record. */
export function recordedTraces(kind: TraceKind): "none" | "binned" | "exact" {
  return kind === "all" ? "binned" : kind;
}

/** The response that says a day did not end by itself; always kept, so that no mean over such days goes unmarked. */
export const UNFINISHED = "unfinished";

/** All that is needed to simulate any day of a study, as plain data that can go to another thread. */
export interface DaySource {
  seed: string;
  /** Whether days come in antithetic pairs. */
  procedure: Procedure;
  /** One per variant. */
  plans: readonly Plan[];
  /** The responses that are kept of each day, in this order. */
  keys: readonly string[];
  /** Traces of replication 0. */
  traces: TraceKind;
  /** Conservation of heads checked at every event (slow). */
  check: boolean;
  /** A day with more events fails. */
  mostEvents: number;
}

export function daySource(study: Study, traces: TraceKind, check: boolean, mostEvents = MAX_EVENTS): DaySource {
  const plans = study.variants.map(({ plan }) => plan);
  return { seed: study.seed, procedure: study.procedure, plans, keys: keptKeys(study), traces, check, mostEvents };
}

/**
 * What the study asks for, the usual responses when it asks for nothing; `UNFINISHED` is among them in any case, and so is what tells whose
 * absence cut a week short, how stunned heads fared, and what tells why the day ended when it did unless the study does without.
 */
function keptKeys(study: Study): string[] {
  const why = study.why ? study.variants.flatMap(({ plan }) => bindingKeys(plan)) : [];
  const killLine = study.variants.flatMap(({ plan }) => killLineKeys(plan));
  const cutShort = study.variants.flatMap(({ plan }) => cutShortKeys(plan));
  const decision = study.variants.flatMap(({ plan }) => decisionKeys(plan));
  return [...new Set([...askedKeys(study), UNFINISHED, ...cutShort, ...decision, ...killLine, ...why])];
}

/**
 * Keys of the responses a study reports, its headline first; the usual ones of all variants when it names none. Those
 * its procedure looks at are among them in any case.
 */
export function askedKeys({ responses, variants, procedure }: Study): string[] {
  const named = responses.length > 0 ? responses : variants.flatMap(({ plan }) => usualResponses(plan));
  const { stopping, selection, controls } = procedure;
  const rules = [stopping, selection].flatMap((rule) => (rule === null ? [] : [rule.response]));
  return [...new Set([...named, ...rules, ...controls.map(({ response }) => response)])];
}

/** What the response with this key is; an Error when no variant has it. */
export function knownResponse(study: Study, key: string): ResponseInfo {
  const found = knownResponses(study).get(key);
  if (found === undefined) throw new Error(`no variant has a response "${key}"`);
  return found;
}

/** What each response is; of one that several variants have, as the first of them says. */
export function knownResponses({ variants }: Study): Map<string, ResponseInfo> {
  const known = new Map<string, ResponseInfo>();
  for (const { plan } of variants) {
    for (const response of responsesOf(plan)) if (!known.has(response.key)) known.set(response.key, response);
  }
  return known;
}
