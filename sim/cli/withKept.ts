import type { Study } from "../asked/study/index.ts";
import type { DayJournal } from "../days/run/index.ts";

/**
 * A search's own journal joined with one on disk: of the days that this study asks for, those that the disk knows are
 * told to the search as if they were new, so that it counts as it would have counted in one go.
 */
export function withKept(own: DayJournal, kept: DayJournal, { replications }: Pick<Study, "replications">): DayJournal {
  const known = [...own.known];
  const places = new Set(known.map(({ variant, replication }) => `${variant} ${replication}`));
  for (const day of kept.known) {
    const place = `${day.variant} ${day.replication}`;
    if (day.replication >= replications || places.has(place)) continue;
    places.add(place);
    known.push(day);
    own.note(day);
  }
  return {
    known,
    note(day) {
      own.note(day);
      kept.note(day);
    },
  };
}
