/**
 * The largest plan that is read. Far beyond any real line; they keep a slip of the keyboard (a zero too many) from
 * turning into hours of computing.
 */
export const CEILINGS = {
  stages: 300,
  positions: 64,
  places: 100_000,
  heads: 10_000_000,
  loads: 2000,
  cratesPerLoad: 10_000,
  headsPerCrate: 1000,
  crates: 1_000_000,
  crews: 100,
  people: 1000,
  peoplePerPosition: 20,
  shifts: 10,
  breaks: 100,
  limits: 100,
  breakdowns: 20,
  sharedBreakdowns: 50,
  paces: 100,
  removals: 20,
  sharePoints: 50,
  diversions: 20,
  byProducts: 50,
  settings: 50,
  gates: 30,
  vessels: 100,
  observedValues: 10_000,
  sources: 1000,
  uncertain: 100,
  uncertainPaths: 50,
} as const;
