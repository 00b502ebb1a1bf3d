/** How sure we are of the expected figure. */
export const LABELS = {
  "V-chain": "recomputed as an exact continuous-time Markov chain",
  "V-closed": "recomputed from the closed form",
  "V-num": "recomputed numerically (quadrature, root finding, another library)",
  "V-MC": "recomputed by Monte Carlo, good to the error stated",
  "V-doc": "read in the document, or in one that quotes it",
  MEM: "from memory",
} as const;

export const CLASSES = {
  P: "published source",
  C: "common practice, no source",
  W: "worked for this project",
} as const;

/** One line of the table of what is checked against what. */
export interface OutsideRow {
  id: string;
  what: string;
  /** Author and year; or "common practice, no source", "from memory", "worked here". */
  source: string;
  labels: (keyof typeof LABELS)[];
  sourceClass: keyof typeof CLASSES;
  /** Comparisons of simulated means or samples, each with a false-alarm probability of 0.001. */
  simulated: number;
  /** Comparisons without chance. */
  exact: number;
  /** Why there is no comparison (yet); both counts are 0 then. */
  notChecked?: string;
}
