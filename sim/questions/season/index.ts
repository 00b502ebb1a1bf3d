/** The weeks of a year by how they differ from a plan's week -> one study of all kinds of week -> a year. */

// The question

export { readSeason, type SeasonEntry, type SeasonQuestion, type SeasonReading } from "./readSeason.ts";
export { seasonJsonSchema } from "./seasonFile.ts";

// The answer

export { readSeasonResult, type Season, type SeasonKey, type SeasonKind } from "./season.ts";
export { seasonOf } from "./seasonOf.ts";
