import type { Cause, ReasonPart } from "../contract.ts";
import { isolated } from "../frame/index.ts";

/** What seconds of the day can be owed to, in the order in which pictures give them their textures. */
export const CAUSE_KINDS = [
  "work",
  "work, a place was waited for",
  "work, people were lacking",
  "work, heads were held back",
  "repair",
  "planned stop",
  "dwell and travel",
  "supply",
  "emptying of a vessel",
] as const;

const CAUSES: Record<Cause, { kind: (typeof CAUSE_KINDS)[number]; words: string }> = {
  work: { kind: "work", words: "its work" },
  place: { kind: "work, a place was waited for", words: "its work, a place was waited for" },
  people: { kind: "work, people were lacking", words: "its work, its people had work at more than one place" },
  absent: { kind: "work, people were lacking", words: "its work, people were absent" },
  "few people": { kind: "work, people were lacking", words: "its work, fewer people than positions" },
  hold: { kind: "work, heads were held back", words: "its work, heads were held back" },
  walking: { kind: "dwell and travel", words: "people walking there" },
  repair: { kind: "repair", words: "repairs" },
  repairer: { kind: "repair", words: "waiting for somebody who repairs" },
  "shared breakdown": { kind: "repair", words: "its repairs" },
  "shared repairer": { kind: "repair", words: "waiting for somebody who repairs it" },
  dwell: { kind: "dwell and travel", words: "its dwell" },
  travel: { kind: "dwell and travel", words: "the way to the next stage" },
  chain: { kind: "dwell and travel", words: "the ride along it" },
  "planned stop": { kind: "planned stop", words: "planned stops" },
  help: { kind: "work, heads were held back", words: "stunned heads that waited too long, and help for them" },
  emptying: { kind: "emptying of a vessel", words: "being emptied" },
  load: { kind: "supply", words: "its arrival" },
  arrivals: { kind: "supply", words: "heads that arrive one by one" },
  "lorry away": { kind: "supply", words: "crates that are under way" },
};

/** Where seconds of the day went, and to what: "skinning", "repairs (jam)"; `kind` is an index into `CAUSE_KINDS`. */
export function causeWords({ cause, stage, detail }: Pick<ReasonPart, "cause" | "stage" | "detail">): {
  where: string;
  what: string;
  kind: number;
} {
  const { kind, words } = CAUSES[cause];
  const where = isolated(stage || detail || "supply");
  const what = stage !== "" && detail !== "" ? `${words} (${isolated(detail)})` : words;
  return { where, what, kind: CAUSE_KINDS.indexOf(kind) };
}
