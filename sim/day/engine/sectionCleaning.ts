import type { SectionCleaning, StageRecord } from "./dayRecord.ts";
import type { DayState } from "./state/dayState.ts";

/**
 * When each section is cleaned: it can begin when the section's own time is over (nothing comes to any of its stages any
 * more) and enough people of the crews that clean are not at another section. The section that is empty first comes first, at
 * equal times in the plan's order. Those people are the crews' own of the last shift; what they still do on the line is not
 * looked at. Nobody there, or nothing that came to a section: it is not cleaned.
 */
export function sectionCleanings(day: DayState, stages: readonly StageRecord[]): SectionCleaning[] {
  const { cleaning, stages: columns, sectionNames } = day.line;
  if (cleaning === null || day.workFinish === 0) return [];
  const emptyFrom = cleaning.sections.map(({ section }) =>
    Math.max(
      0,
      ...stages.map(({ ownTime }, stage) => (columns.section[stage] === section ? (ownTime?.toSeconds ?? 0) : 0)),
    ),
  );
  const people = cleaning.crews.reduce((sum, crew) => sum + (day.crewAt[crew]!.present.at(-1) ?? 0), 0);
  const freeFrom = new Array<number>(people).fill(0);
  const used = cleaning.sections.map((_, row) => row).filter((row) => emptyFrom[row]! > 0);
  const order = used.sort((a, b) => emptyFrom[a]! - emptyFrom[b]! || a - b);
  if (people === 0) return [];
  return order.map((row) => {
    const { section, seconds, people: wanted } = cleaning.sections[row]!;
    const at = Math.min(wanted, people);
    freeFrom.sort((a, b) => a - b);
    const fromSeconds = Math.max(emptyFrom[row]!, freeFrom[at - 1]!);
    // Fewer people than it takes are at it for longer.
    const toSeconds = fromSeconds + (seconds * wanted) / at;
    freeFrom.fill(toSeconds, 0, at);
    return { section: sectionNames[section]!, people: at, fromSeconds, toSeconds };
  });
}
