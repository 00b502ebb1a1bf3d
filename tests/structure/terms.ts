/** One thing that a reader meets, with its one name in labels, headings and titles. */
export interface Term {
  /** What is said. */
  say: string;
  /** What it is, in half a sentence. */
  means: string;
  /** What must not be said instead; matched as whole words, whatever their case. */
  instead: readonly string[];
  /** Where the exact term may stand all the same; never in a label, a heading or the title of a picture. */
  exact: string;
}

/**
 * The list of terms. Keys of files and of results keep the names they have; so do the statistics in the data dictionary,
 * notes and tooltips, where whoever has to judge a method looks for the exact word.
 */
export const TERMS: readonly Term[] = [
  {
    say: "simulated day",
    means: "one run of a plan with its own luck",
    instead: ["replication", "replications"],
    exact: "study files, data dictionary, notes",
  },
  {
    say: "compared on the same days",
    means: "two plans, each day with the same luck",
    instead: ["paired", "common random numbers"],
    exact: "notes, README of statistics",
  },
  {
    say: "today's plan (or its name)",
    means: "what every variant is compared with",
    instead: ["base case", "baseline"],
    exact: "study files",
  },
  {
    say: "sure even though eight changes were compared",
    means: "an interval or verdict that holds for all comparisons at once",
    instead: ["holm", "holm-adjusted", "bonferroni", "family-wise", "simultaneous", "p-value"],
    exact: "data dictionary, notes",
  },
  {
    say: "no difference shown",
    means: "the interval leaves 0 in",
    instead: ["significant", "not significant", "not distinguishable"],
    exact: "nowhere",
  },
  {
    say: "waits for heads",
    means: "a station that is ready and has nothing to work on",
    instead: ["starved", "starving"],
    exact: "legend, once; column keys",
  },
  {
    say: "cannot pass its head on",
    means: "a station that is done and finds no place behind it",
    instead: ["blocked", "blocking"],
    exact: "legend, once; column keys",
  },
  {
    say: "time in the trough, time in the chiller",
    means: "how long a head stays in a stage that only holds it",
    instead: ["dwell", "dwell time", "residence time"],
    exact: "plan key",
  },
  {
    say: "end of work",
    means: "the last work on a head, clock time",
    instead: ["makespan", "completion time"],
    exact: "nowhere",
  },
  {
    say: "breakdown",
    means: "a machine that stops by itself, until it is repaired",
    instead: ["failure", "failures", "outage", "downtime"],
    exact: "engine",
  },
  {
    say: "people",
    means: "those of a crew who work",
    instead: ["operatives", "resources", "headcount", "manpower", "workforce"],
    exact: "nowhere",
  },
  {
    say: "station, stage",
    means: "where heads are worked on or held",
    instead: ["server", "servers", "workstation"],
    exact: "README of the estimate",
  },
  {
    say: "what the line waited for",
    means: "what a second up to the end of work is owed to",
    instead: ["binds", "binding", "bound by"],
    exact: "notes: binding path; keys",
  },
  {
    say: "offer",
    means: "what a supplier offers for the plant, with its price",
    instead: ["purchase option", "investment case"],
    exact: "nowhere",
  },
  {
    say: "how uneven the times are",
    means: "standard deviation over mean",
    instead: ["coefficient of variation", "squared cv", "scv"],
    exact: "plan key `cv`, notes",
  },
];

/** What a text says that the list has another name for: the forbidden words in it, each with what to say. */
export function forbiddenIn(text: string): { word: string; say: string }[] {
  return TERMS.flatMap(({ say, instead }) =>
    instead
      .filter((word) => new RegExp(`(?<![\\w-])${word.replaceAll(" ", "\\s+")}(?![\\w-])`, "iu").test(text))
      .map((word) => ({ word, say })),
  );
}
