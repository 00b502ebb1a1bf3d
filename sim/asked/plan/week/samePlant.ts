import type { ReadingFault } from "../../../text/units/index.ts";
import type { Plan } from "../plan.ts";

/** What a day's plan must have as the usual day has it, since what stays overnight stands in it. */
const PARTS: readonly { words: string; of(plan: Plan): unknown }[] = [
  { words: "stages", of: ({ line }) => line.map(({ name, kind }) => [name, kind]) },
  {
    words: "stations on chains",
    of: ({ line }) => line.map((stage) => ("stations" in stage ? stage.stations.map(({ name }) => name) : [])),
  },
  { words: "places", of: ({ line }) => line.map((stage) => ("places" in stage ? [stage.places] : [])) },
  { words: "hooks", of: ({ line }) => line.map((stage) => ("headsPerHook" in stage ? stage.headsPerHook : 0)) },
  {
    words: "crate steps",
    of: ({ liveHandling }) =>
      liveHandling && [...liveHandling.toHanging, ...liveHandling.back].map(({ name, places }) => [name, places]),
  },
  { words: "crates", of: ({ liveHandling }) => liveHandling && [liveHandling.cratesAtHanging, liveHandling.fleet] },
  {
    words: "breakdowns",
    of: ({ line, sharedBreakdowns }) => [
      line.map((stage) => ("breakdowns" in stage ? stage.breakdowns.map(({ name, scope }) => [name, scope]) : [])),
      sharedBreakdowns.map(({ name }) => name),
    ],
  },
  {
    words: "positions that break down",
    of: ({ line }) => line.map((stage) => ("breakdowns" in stage && stage.breakdowns.length > 0 ? stage.positions : 0)),
  },
  { words: "limits", of: ({ limits }) => limits.map(({ name }) => name) },
  {
    words: "shares that depend on the head",
    of: ({ line }) => line.map(({ removals, diversions }) => [removals.length, diversions.length]),
  },
  { words: "gates", of: ({ gates }) => gates.map(({ name }) => name) },
  { words: "vessels", of: ({ vessels }) => vessels.map(({ name }) => name) },
  { words: "crews", of: ({ crews }) => crews.map(({ name }) => name) },
  { words: "ways of supply", of: ({ supply }) => supply.kind },
];

/** The first part in which a day's plan is of another plant than the usual day's; null where it is of the same. */
export function differentPlant(usual: Plan, day: Plan): ReadingFault | null {
  const part = PARTS.find(({ of }) => comparable(of(usual)) !== comparable(of(day)));
  if (part === undefined) return null;
  return {
    found: `the day has other ${part.words} than the plan`,
    allowed: "the same plant on every day: other hours, people, lorries, speeds and times",
    remedy: `leave the ${part.words} as they are, or change the plan itself`,
  };
}

/** JSON has no word for infinity. */
function comparable(part: unknown): string {
  return JSON.stringify(part, (_, value) => (value === Number.POSITIVE_INFINITY ? "no limit" : value));
}
