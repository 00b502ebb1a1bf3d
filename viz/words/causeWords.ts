import type { Cause, ReasonPart } from "../contract.ts";
import { isolated } from "../frame/index.ts";

/** What the line waited for, in the order in which pictures give it their textures. */
export const CAUSE_KINDS = [
  "work",
  "work, full",
  "work, short of people",
  "work, heads held back",
  "repair",
  "planned stop",
  "stay and travel",
  "supply",
  "emptying a vessel",
] as const;

interface CauseText {
  kind: (typeof CAUSE_KINDS)[number];
  /** After the name of the stage and a colon. */
  words: string;
  /** After "because". */
  because: string;
}

const CAUSES: Record<Cause, CauseText> = {
  work: { kind: "work", words: "its work", because: "work there takes this long" },
  place: {
    kind: "work, full",
    words: "its work, while it was full and heads before it waited",
    because: "it was full and heads before it had to wait",
  },
  people: {
    kind: "work, short of people",
    words: "its work, while its people were busy elsewhere",
    because: "its people were busy elsewhere",
  },
  absent: {
    kind: "work, short of people",
    words: "its work, while people were absent",
    because: "people were absent",
  },
  "few people": {
    kind: "work, short of people",
    words: "its work, with fewer people than positions",
    because: "it has fewer people than positions",
  },
  hold: {
    kind: "work, heads held back",
    words: "its work, while heads were held back",
    because: "heads were held back",
  },
  walking: { kind: "stay and travel", words: "people walking there", because: "people had to walk there" },
  repair: { kind: "repair", words: "repairs", because: "it was being repaired" },
  repairer: {
    kind: "repair",
    words: "waiting for somebody to repair it",
    because: "it waited for somebody to repair it",
  },
  "shared breakdown": { kind: "repair", words: "repairs", because: "it was being repaired" },
  "shared repairer": {
    kind: "repair",
    words: "waiting for somebody to repair it",
    because: "it waited for somebody to repair it",
  },
  dwell: { kind: "stay and travel", words: "the time heads stay in it", because: "heads have to stay this long" },
  travel: {
    kind: "stay and travel",
    words: "the way to the next stage",
    because: "the way to the next stage takes this long",
  },
  chain: { kind: "stay and travel", words: "the ride on it", because: "the ride on it takes this long" },
  "planned stop": { kind: "planned stop", words: "planned stops", because: "it stood by plan" },
  help: {
    kind: "work, heads held back",
    words: "help for stunned heads that waited too long",
    because: "stunned heads waited too long and were helped",
  },
  emptying: { kind: "emptying a vessel", words: "being emptied", because: "it was being emptied" },
  load: { kind: "supply", words: "its arrival", because: "it had not arrived" },
  arrivals: { kind: "supply", words: "heads that arrive one by one", because: "heads arrive one by one" },
  "lorry away": { kind: "supply", words: "crates that are under way", because: "crates were under way" },
  "left over": {
    kind: "work",
    words: "what was left over from yesterday",
    because: "what was left over from yesterday came first",
  },
};

/**
 * Where seconds of the day went, and why: "skinning", "repairs (jam)", "it was being repaired (jam)"; `kind` is an index
 * into `CAUSE_KINDS`.
 */
export function causeWords({ cause, stage, detail }: Pick<ReasonPart, "cause" | "stage" | "detail">): {
  where: string;
  what: string;
  because: string;
  kind: number;
} {
  const { kind, words, because } = CAUSES[cause];
  const where = isolated(stage || detail || "supply");
  const more = stage !== "" && detail !== "" ? ` (${isolated(detail)})` : "";
  return { where, what: `${words}${more}`, because: `${because}${more}`, kind: CAUSE_KINDS.indexOf(kind) };
}
