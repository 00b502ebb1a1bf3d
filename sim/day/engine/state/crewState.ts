import type { UniformStream } from "../../../maths/random/index.ts";
import type { CompiledLine } from "../../line/index.ts";
import { Headcount } from "./headcount.ts";
import { rowsOf } from "./rowsOf.ts";
import type { StageState } from "./stageState.ts";

/** One crew while a day runs: what `CrewColumns` says of it, and all that changes. */
export class CrewState {
  readonly index: number;
  readonly rule: number;
  readonly peopleMax: number;
  readonly walkSeconds: number = Number.NaN;
  /** Stages it serves, in line order. */
  readonly stations: readonly StageState[];
  /** People of the shift that came today, on a break or not; how many are on a break now. */
  people = 0;
  away = 0;
  /** People at work who go on a break when that is done. */
  owing = 0;
  /** Breaks begun so far; by their number: lengths of all up to it, those left out that end at a fixed time. */
  breaksBegun = 0;
  readonly restSeconds: number[] = [0];
  /** The last break with a fixed end, by number, and that end. */
  lastFixed = 0;
  fixedEnd = Number.NaN;
  /** Breaks begun when the last shift ended: they are not owed any more. */
  forgiven = 0;
  /** Looks for work when the instant is over. */
  looks = false;
  /** People of the shift who are absent today. */
  missing = 0;
  /** People at work; booked person-seconds of work and of presence, up to `since`. */
  busy = 0;
  // Seconds begin as NaN: see DayState.
  since = Number.NaN;
  busySeconds = Number.NaN;
  presentSeconds = Number.NaN;
  /** People at work: by stage index, null where it has no station; and at repairs and emptyings. */
  readonly at: readonly (Headcount | null)[];
  readonly atJobs = new Headcount();
  /** By station: person-seconds in which work in hand there waited for the repair of its machine. */
  readonly repairSeconds: Float64Array;
  /** Repairs and emptyings that wait for a person, first come first served, by number: see jobs.ts. */
  readonly jobs: number[] = [];
  /** End of its last shift where it leaves when its own work is done, else NaN; and when its people last ended some work. */
  readonly leavesFrom: number = Number.NaN;
  lastWork = Number.NaN;
  /** How many of its first n people are missing today: absent[n]. */
  readonly absent: Int32Array;
  /** By shift: people there, those who step in for others counted where they work. */
  readonly present: Int32Array;
  /** Who steps in here. */
  readonly helpers: { crew: CrewState; people: Int32Array }[] = [];
  /** Free people by the station where they worked last, and those who have not worked yet. */
  readonly located: Int32Array;
  unlocated: number;

  /** `absence`: the stream that decides who is missing. */
  constructor(line: CompiledLine, index: number, stageAt: readonly StageState[], absence: () => UniformStream) {
    const { crews } = line;
    this.index = index;
    this.rule = crews.rule[index]!;
    this.peopleMax = crews.peopleMax[index]!;
    this.walkSeconds = crews.walkSeconds[index]!;
    this.stations = Array.from(rowsOf(crews.stations, crews.stationFrom, index), (stage) => stageAt[stage]!);
    this.at = stageAt.map((stage) => (this.stations.includes(stage) ? new Headcount() : null));
    this.repairSeconds = new Float64Array(this.stations.length);
    this.absent = absentees(this.peopleMax, crews.absentShare[index]!, absence);
    const { absent } = this;
    this.present = Int32Array.from(crews.shiftPeople[index]!, (people) => people - absent[people]!);
    this.located = new Int32Array(this.stations.length);
    this.unlocated = this.peopleMax;
    this.leavesFrom = crews.leavesFrom[index]!;
    this.lastWork = 0;
    this.since = 0;
    this.busySeconds = 0;
    this.presentSeconds = 0;
  }
}

/**
 * People of other crews step in, for the whole shift, where too few are there: crews in the plan's order, each helped by the
 * first of its own list that can spare somebody, as long as somebody can.
 */
export function stepIn({ crews }: CompiledLine, crewAt: readonly CrewState[]): void {
  for (const [index, cover] of crews.cover.entries()) {
    if (cover === null) continue;
    const here = crewAt[index]!;
    for (const [row, by] of cover.by.entries()) {
      const crew = crewAt[by]!;
      const people = here.present.map((there, shift) => {
        const keeps = Math.max(cover.keeps[row]!, crews.cover[by]?.atLeast[shift] ?? 0);
        return Math.min(Math.max(0, cover.atLeast[shift]! - there), Math.max(0, crew.present[shift]! - keeps));
      });
      if (people.every((count) => count === 0)) continue;
      here.helpers.push({ crew, people });
      for (const [shift, count] of people.entries()) {
        here.present[shift]! += count;
        crew.present[shift]! -= count;
      }
    }
  }
}

/** People of the shift who are not on a break. */
export function peopleHere({ away, people }: CrewState): number {
  return Math.max(0, people - away);
}

/**
 * How many of a crew's first n people are missing today, for n = 0 .. people. One draw per person, so that a smaller crew
 * or another share keeps everybody else's luck.
 */
function absentees(people: number, share: number, stream: () => UniformStream): Int32Array {
  const missing = new Int32Array(people + 1);
  if (share === 0) return missing;
  const draws = stream();
  for (let person = 0; person < people; person++) {
    missing[person + 1] = missing[person]! + (draws.next() < share ? 1 : 0);
  }
  return missing;
}
