import { type Plan, siteFigure } from "../../asked/plan/index.ts";
import type { DayRecord } from "../../day/engine/index.ts";
import { steps, workplace } from "../../day/line/index.ts";
import { meanOf } from "../../maths/random/index.ts";
import { does } from "../../text/kinds/index.ts";
import { type ByProductRow, byProductRows } from "./byProducts.ts";
import { roomsOfLine, wantedRate } from "./railLine.ts";

/** What a plan and its days ask of the building. */
export interface LayoutNeeds {
  /** Lockers: people of all shifts together, by the side that they work on. */
  lockers: { unclean: number; clean: number };
  /** Most people of one shift. */
  shiftPeople: number;
  /** Null without crates. */
  crates: { lairage: number; ofLorry: number; atHanging: number; washers: number } | null;
  lorries: number;
  carcassKilograms: number;
  byProducts: ByProductRow[];
  /** By stage that holds carcasses in the cold: hooks, and heads on each. */
  hooks: Map<string, number>;
}

/** Rooms of the line on the clean side. */
const CLEAN = ["evisceration", "chilling", "cutting and packing"];

export function layoutNeeds(plan: Plan, days: readonly DayRecord[]): LayoutNeeds {
  return {
    lockers: lockersOf(plan),
    shiftPeople: Math.max(0, ...plan.day.shifts.map((_, shift) => peopleIn(plan, shift))),
    crates: cratesOf(plan, days),
    lorries: Math.max(1, ...days.map(lorriesAtOnce)),
    carcassKilograms: Math.max(0, ...days.map(({ masses }) => masses.outKg.carcass ?? 0)),
    byProducts: byProductRows(plan, days),
    hooks: new Map(
      plan.line.flatMap((stage) => (does(stage, "hold heads") ? [[stage.name, hooksOf(stage, plan, days)]] : [])),
    ),
  };
}

function peopleIn({ crews }: Plan, shift: number): number {
  return crews.reduce((sum, { people }) => sum + (people[shift] ?? 0), 0);
}

function lockersOf(plan: Plan): LayoutNeeds["lockers"] {
  const lockers = { unclean: 0, clean: 0 };
  for (const { name, people } of plan.crews) lockers[sideOf(name, plan)] += people.reduce((sum, each) => sum + each, 0);
  return lockers;
}

/** A crew that works on the clean side alone changes there; all others on the unclean side. */
export function sideOf(crew: string, plan: Plan): "unclean" | "clean" {
  const rooms = roomsOfLine(plan);
  const own = steps(plan).filter((step) => workplace(step).crews.includes(crew));
  const isClean = own.length > 0 && own.every(({ name }) => CLEAN.includes(rooms.get(name) ?? ""));
  return isClean ? "clean" : "unclean";
}

function cratesOf({ liveHandling, supply }: Plan, days: readonly DayRecord[]): LayoutNeeds["crates"] {
  if (liveHandling === null || supply.kind !== "loads") return null;
  const places = liveHandling.toHanging.at(-1)!.places;
  const ofLorry = Math.max(0, ...supply.loads.map(({ crates }) => crates));
  const seen = Math.max(ofLorry, ...days.map(({ lairage }) => lairage?.max ?? 0));
  return {
    lairage: Number.isFinite(places) ? places : seen,
    ofLorry,
    atHanging: liveHandling.cratesAtHanging,
    washers: liveHandling.back[0]?.positions ?? 0,
  };
}

/** Lorries that stand in the yard together at most; one that never left counts to the end. */
function lorriesAtOnce({ loads, finishSeconds }: DayRecord): number {
  const there = loads.filter(({ arrivedSeconds }) => arrivedSeconds !== null);
  return Math.max(
    0,
    ...there.map(({ arrivedSeconds: at }) => {
      return there.filter((load) => load.arrivedSeconds! <= at! && (load.leftSeconds ?? finishSeconds) > at!).length;
    }),
  );
}

/** Places of the stage by heads on a hook; without a limit, the most that hung there, or rate x stay. */
function hooksOf(stage: Plan["line"][number], plan: Plan, days: readonly DayRecord[]): number {
  if (!does(stage, "hold heads")) return 0;
  const seen = Math.max(0, ...days.map((day) => day.stages.find(({ name }) => name === stage.name)?.queue.max ?? 0));
  const stay = stage.dwell.kind === "drawn" ? wantedRate(plan) * meanOf(stage.dwell.seconds) : 0;
  const places = Number.isFinite(stage.places) ? stage.places : Math.max(seen, stay);
  return Math.ceil(places / stage.headsPerHook);
}

/** People who work on the line's stages in a room at once: those of its positions, never more than its crews have. */
export function peopleInRoom(plan: Plan, inRoom: (stage: string) => boolean): number {
  const own = steps(plan).filter((step) => inRoom(step.name));
  const places = own.reduce((sum, step) => {
    const { crews, positions, peoplePerPosition } = workplace(step);
    return sum + (crews.length === 0 ? 0 : positions * peoplePerPosition);
  }, 0);
  const crews = new Set(own.flatMap((step) => workplace(step).crews));
  const most = Math.max(
    0,
    ...plan.day.shifts.map((_, shift) =>
      plan.crews.filter(({ name }) => crews.has(name)).reduce((sum, { people }) => sum + (people[shift] ?? 0), 0),
    ),
  );
  return Math.min(places, most);
}

/** Kilograms that stand in dispatch. */
export function dispatchKilograms(plan: Plan, { carcassKilograms }: LayoutNeeds): number {
  return carcassKilograms * siteFigure(plan, "rooms.dispatchHeld");
}
