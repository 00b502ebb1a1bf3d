import type { Chain, Plan, Station } from "../../asked/plan/index.ts";
import { meanOf } from "../../maths/random/index.ts";
import { byKind, does } from "../../text/kinds/index.ts";
import { chainMachine } from "./chainMachine.ts";
import type { SerialStation } from "./decompose.ts";
import { meanDwellSeconds } from "./dwellSeconds.ts";
import { headFlow } from "./headFlow.ts";
import { liveWeight } from "./liveWeight.ts";
import { sharedStops } from "./sharedStops.ts";
import { workOf } from "./workOf.ts";

/** Places in which each head stays for a while without being worked on. */
export interface Hold {
  name: string;
  places: number;
  seconds: number;
}

/** A station of the main way; times are per head hung. */
export interface RowStation extends SerialStation {
  name: string;
  /** Dwells on the way to it, in order. */
  dwells: Hold[];
  /** Travel during which a head holds one of its places already. */
  travelSeconds: number;
}

/**
 * The main way of a plan as stations in a row. A chain becomes a machine that takes a head every step, followed by the
 * stations on it that can hold it up. Off-line stages are not in it, but the heads that come
 * back from them are; dwells behind the last station (the chiller above all) hold nothing up but by their places.
 */
export function serialLine(plan: Plan): RowStation[] {
  const { visits } = headFlow(plan);
  const weightKg = liveWeight(plan).meanKg;
  const shared = sharedStops(plan);
  const sharedOn = ({ name, stations: on }: Chain) =>
    [name, ...on.map((station) => station.name)].flatMap((each) => shared.get(each) ?? []);
  const stations: RowStation[] = [];
  let dwells: Hold[] = [];
  let travelSeconds = 0;
  for (const stage of plan.line.filter(({ offLine }) => !offLine)) {
    const heads = visits.get(stage.name) ?? 0;
    if (does(stage, "hold heads")) {
      const seconds = (travelSeconds + meanDwellSeconds(stage, plan)) * heads;
      dwells.push({ name: stage.name, places: stage.places, seconds });
    } else {
      const [first, ...others] = byKind<typeof stage, Reduced[]>(stage, {
        station: (own) => {
          const breakdowns = [...own.breakdowns, ...(shared.get(own.name) ?? [])];
          return [stationOf({ ...own, breakdowns }, heads, weightKg)];
        },
        chain: (own) => chainMachine(own, heads, weightKg, sharedOn(own)),
      });
      stations.push({ ...first!, dwells, travelSeconds: travelSeconds * heads }, ...others.map(directly));
      dwells = [];
    }
    travelSeconds = stage.travelSeconds === null ? 0 : meanOf(stage.travelSeconds);
  }
  return stations;
}

type Reduced = SerialStation & { name: string };

function directly(station: Reduced): RowStation {
  return { ...station, dwells: [], travelSeconds: 0 };
}

function stationOf(station: Station, heads: number, weightKg: number): Reduced {
  return {
    name: station.name,
    work: workOf(station, heads, weightKg),
    positions: station.positions,
    places: station.buffer,
  };
}
