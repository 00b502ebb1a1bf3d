import { z } from "zod";
import type { Estimate } from "../../maths/statistics/index.ts";
import type { SeasonEntry } from "./readSeason.ts";

/** A figure of each week of a year. */
export const SEASON_KEYS = ["end", "overtimeHours", "late", "people"] as const;
export type SeasonKey = (typeof SEASON_KEYS)[number];

/** The answer in one sentence, what it rests on, and what to do next. */
export interface SeasonWords {
  verdict: string;
  words: string[];
  next: string[];
}

/** Before it is put into words. */
export type SeasonFindings = Omit<Season, keyof SeasonWords>;

/** What came of a season: what season.json holds. */
export interface Season extends SeasonWords {
  format: 1;
  name: string;
  question: string;
  seed: string;
  confidence: number;
  /** Weeks simulated of each kind of week. */
  runs: number;
  begins: string | null;
  currency: string | null;
  /** Clock from which the ends of days are counted, seconds after midnight. */
  startClockSeconds: number;
  /** People of all crews in the shift that has most, nobody missing. */
  people: number;
  orders: number;
  /** A row for each kind of week that the year has, in the order of the calendar. */
  kinds: SeasonKind[];
  /** Over all weeks of the year; null where a kind of week has no value. */
  year: Record<YearKey, Estimate | null>;
  /** Whose absence cut weeks short, and which chillers were full then. */
  lacking: string[];
  full: string[];
}

/** Weeks of one kind, one after another, with their means over simulated weeks. */
export interface SeasonKind extends Omit<SeasonEntry, "variant"> {
  /** The first of them, counted from 1. */
  from: number;
  /** The day whose work ends latest; null where no week of the kind came to its end. */
  latestDay: string | null;
  /**
   * Latest end of work of the week, seconds after the day's start; overtime, person-hours; orders late; people that would do the work without
   * overtime. Null where no week has a value.
   */
  figures: Record<SeasonKey, Estimate | null>;
  /** Of the simulated weeks, how many were cut short. */
  cut: number;
}

export const YEAR_KEYS = ["made", "carcassKg", "overtimeHours", "late", "cost", "margin"] as const;
export type YearKey = (typeof YEAR_KEYS)[number];

const ESTIMATE = z
  .looseObject({ mean: z.number(), low: z.number().nullable(), high: z.number().nullable(), n: z.number() })
  .nullable();
const of = (keys: readonly string[]) => z.looseObject(Object.fromEntries(keys.map((key) => [key, ESTIMATE])));

/** What report and picture walk through. */
const SHAPE = z.looseObject({
  ...{
    format: z.literal(1),
    name: z.string(),
    runs: z.number(),
    confidence: z.number(),
    people: z.number(),
    orders: z.number(),
  },
  ...{ begins: z.string().nullable(), currency: z.string().nullable(), startClockSeconds: z.number() },
  kinds: z.array(
    z.looseObject({
      ...{
        name: z.string(),
        times: z.number(),
        from: z.number(),
        heads: z.number(),
        weight: z.number(),
        absence: z.number(),
      },
      ...{ latestDay: z.string().nullable(), cut: z.number(), figures: of(SEASON_KEYS) },
    }),
  ),
  year: of(YEAR_KEYS),
  lacking: z.array(z.string()),
  full: z.array(z.string()),
});

/** What was found, from the JSON in a season.json; null where that holds nothing a report can be drawn from. */
export function readSeasonResult(json: unknown): Season | null {
  return SHAPE.safeParse(json).success ? (json as Season) : null;
}
