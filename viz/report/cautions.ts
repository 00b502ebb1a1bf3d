/** The cautions that every report, page and README carries, word for word. */
export const CAUTIONS: readonly string[] = [
  "A planning aid built on the numbers it is given. It does not set stunning currents, bleeding times, chilling rules, line speeds, staffing minimums or guarding; those are for the law that applies at the site, the official veterinarian, the machine makers' manuals and licensed practice.",
  "Animal welfare and people's safety come before throughput.",
  "Verify against the real line before relying on it.",
];
