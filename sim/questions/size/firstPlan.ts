import { isRecord } from "../../asked/plan/index.ts";
import type { Demand } from "./demand.ts";
import type { Parts } from "./parts.ts";
import { dayOf } from "./plan/dayOf.ts";
import { firstLorryAt } from "./plan/firstLorryAt.ts";
import { lineOf } from "./plan/lineOf.ts";
import { liveHandlingOf } from "./plan/liveHandlingOf.ts";
import { soldOf } from "./plan/soldOf.ts";
import { sourcesOf } from "./plan/sourcesOf.ts";
import { vesselsOf } from "./plan/vesselsOf.ts";
import { watchesOf } from "./plan/watchesOf.ts";

/** The plan of a sized line, as its file writes it. */
export function firstPlan(demand: Demand, parts: Parts): Record<string, unknown> {
  const { rate } = parts;
  const sold = soldOf(demand);
  return {
    name: demand.name,
    notes: `${demand.notes}${demand.notes === "" ? "" : " "}A first plan, ${parts.choice.name}, sized from a weekly demand; its sources say what was invented.`,
    target: `${rounded(rate.headsPerSecond * 3600)} /h`,
    sources: sourcesOf(demand, parts),
    day: dayOf(demand, parts),
    supply: { loads: [loadOf(demand, parts)] },
    liveHandling: liveHandlingOf(demand, parts),
    crews: crewsOf(demand, parts),
    line: lineOf(demand, parts),
    ...watchesOf(demand, parts),
    vessels: vesselsOf(demand, parts),
    ...(demand.money === null ? {} : { money: demand.written.money }),
    ...(demand.site === null ? {} : { site: demand.written.site }),
    ...(sold === null ? { dressing: "Say what stays on the carcass" } : { presentation: sold }),
  };
}

function loadOf(demand: Demand, { crates }: Parts): Record<string, unknown> {
  const { written } = demand;
  const { headsPerCrate, delay } = part(written, "crates");
  const { liveWeight, deadOnArrival } = part(written, "animals");
  const repeat =
    crates.lorries === 1 ? {} : { repeat: { every: `${Math.round(crates.everySeconds)} s`, times: crates.lorries } };
  return {
    name: "load",
    at: firstLorryAt(demand),
    ...repeat,
    delay,
    crates: crates.cratesPerLorry,
    headsPerCrate,
    deadOnArrival,
    liveWeight,
  };
}

function crewsOf({ pay, written }: Demand, { crews }: Parts): Record<string, unknown>[] {
  const { walking } = part(written, "line");
  return crews.map(({ name, people, walkingSeconds }) => ({
    name,
    people,
    ...(walkingSeconds > 0 ? { walking } : {}),
    ...(pay === null ? {} : { pay: written.pay }),
  }));
}

function part(written: Record<string, unknown>, key: string): Record<string, unknown> {
  const found = written[key];
  return isRecord(found) ? found : {};
}

/** Three digits and more are enough for what people read. */
function rounded(value: number): number {
  return Number(value.toPrecision(4));
}
