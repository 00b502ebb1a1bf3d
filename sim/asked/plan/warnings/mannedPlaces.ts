import type { Varying } from "../../../maths/varying/index.ts";
import { byKind } from "../../../text/kinds/index.ts";
import type { Breakdown, Plan, Stage } from "../plan.ts";

/** A place with positions that people man: a station, on a chain or not, or a crate step. */
export interface MannedPlace {
  name: string;
  positions: number;
  crews: string[];
  peoplePerPosition: number;
  breakdowns: Breakdown[];
  /** Of a head; null for crate steps, and off the line, where few heads come. */
  cycleSeconds: Varying | null;
  /** Stage whose last head tells when the work here is over; null: the end of the line's work. */
  lastAt: string | null;
}

/** All places with positions, manned or not, in line order. */
export function workPlaces({ liveHandling, line }: Plan): MannedPlace[] {
  const hanging = line[0]?.name ?? null;
  const crates = [
    ...(liveHandling?.toHanging ?? []).map((step) => ({ ...step, cycleSeconds: null, lastAt: step.name })),
    ...(liveHandling?.back ?? []).map((step) => ({ ...step, cycleSeconds: null, lastAt: hanging })),
  ];
  const stations = line.flatMap((stage) =>
    byKind<Stage, MannedPlace[]>(stage, {
      station: (own) => [own.offLine ? { ...own, cycleSeconds: null, lastAt: null } : { ...own, lastAt: own.name }],
      dwell: () => [],
      chain: (own) => own.stations.map((of) => ({ ...of, lastAt: of.name })),
    }),
  );
  return [...crates, ...stations];
}
