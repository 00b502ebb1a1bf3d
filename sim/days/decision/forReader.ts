import { type Reader, readerOf } from "../../text/kinds/index.ts";
import type { DecisionRow } from "../results/index.ts";
import type { Spoken } from "./judged.ts";
import { estimateWords, listed, named, paceOf, paceWords, simulated } from "./phrases.ts";
import type { Weighed } from "./weighed.ts";

/**
 * Puts first what the reader asks first (common practice, no source): a veterinarian about animals outside a time limit, a
 * planner about people, a trainer about the reason. An owner's money stands first within each sentence that has money in
 * it (`joined`); an engineer, and whoever is not known, reads the answer as it is.
 */
export function forReader(weighed: Weighed, spoken: Spoken): Spoken {
  const reader = readerOf(weighed.study.reader);
  return reader === null ? spoken : LEADS[reader](weighed, spoken);
}

const LEADS: Record<Reader, (weighed: Weighed, spoken: Spoken) => Spoken> = {
  veterinarian: (weighed, spoken) =>
    weighed.kind === "limit" ? spoken : { ...spoken, verdict: `${limitsFirst(weighed)} ${spoken.verdict}` },
  planner: (weighed, spoken) => ({ ...spoken, words: [...peopleFirst(weighed, spoken), ...spoken.words] }),
  trainer: (weighed, spoken) => ({ ...spoken, words: [...reasonFirst(weighed, spoken), ...spoken.words] }),
  owner: (_, spoken) => spoken,
  engineer: (_, spoken) => spoken,
};

function limitsFirst({ rows, columns, study, deciding }: Weighed): string {
  const [today, ...others] = rows as [DecisionRow, ...DecisionRow[]];
  if (study.variants[0]!.plan.limits.length === 0)
    return "The plan watches no time limit, so it is not known how long animals wait.";
  const broken = columns
    .filter(({ key }) => key.startsWith("beyond.") && (today.estimates[key]?.mean ?? 0) > 0)
    .sort((a, b) => today.estimates[b.key]!.mean - today.estimates[a.key]!.mean);
  const told = broken.map(
    (info) =>
      `${estimateWords(today.estimates[info.key]!, info, 0)} of the animals are outside '${info.key.slice("beyond.".length)}'`,
  );
  const n = today.estimates[deciding]?.n ?? 0;
  const now =
    broken.length === 0
      ? `Today no animal is outside a time limit in ${n} ${simulated(study)}`
      : `Today ${listed(told.slice(0, NAMED))}${told.length > NAMED ? `, and ${told.length - NAMED} more limits are broken` : ""}`;
  if (others.length === 0) return `${now}.`;
  const harmful = others.filter(({ harm }) => harm !== null);
  if (harmful.length === 0) return `${now}; with none of the plans compared are more.`;
  return `${now}; harm is shown with ${listed(harmful.slice(0, NAMED).map(({ name }) => named(name)))}${harmful.length > NAMED ? ` and ${harmful.length - NAMED} more` : ""}.`;
}

const NAMED = 3;

/** Of the recommended plan, or of the only other one; those of several stand in the table. */
function peopleFirst({ rows }: Weighed, { best }: Spoken): string[] {
  const today = rows[0]!.people;
  const told = best !== null && best > 0 ? [rows[best]!] : rows.slice(1);
  const changed = told.filter(({ people }) => people !== null && people !== today);
  if (today === null || told.length > 1 || changed.length === 0) return [];
  const parts = changed.map(({ name, people }) => `${people} with ${named(name)}`);
  return [`People in the largest shift: ${today} today, ${listed(parts)}.`];
}

function reasonFirst({ findings }: Weighed, { verdict }: Spoken): string[] {
  const pace = paceOf(findings.whys[0]);
  if (pace === null || verdict.includes(paceWords(pace))) return [];
  const others =
    pace.stage === null ? "more speed cannot help before animals come sooner" : "a change elsewhere gains little";
  return [`The reason to look for: today ${paceWords(pace)}; while that lasts, ${others}.`];
}
