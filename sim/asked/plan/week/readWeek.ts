import { does } from "../../../text/kinds/index.ts";
import { SECONDS_PER_DAY } from "../../../text/units/index.ts";
import { type Fault, formatFault } from "../fault.ts";
import { formatPath } from "../formatPath.ts";
import { listWords } from "../listWords.ts";
import { nearestWords } from "../nearestName.ts";
import type { Order, Overnight, Plan, Week, WeekDay } from "../plan.ts";
import { locatedList } from "../rules/located.ts";
import { repeated } from "../rules/uniqueNames.ts";
import type { WeekFile } from "../schema/week.ts";
import { dayJson } from "./dayJson.ts";
import { differentPlant } from "./samePlant.ts";

type Json = Record<string, unknown>;
type FileDay = WeekFile["days"][number];

export type WeekReading = { week: Week; faults: [] } | { week: null; faults: Fault[] };

/** What a week is made from: the sound plan, as JSON and as read, its week of sound shape, and what reads a day's plan. */
interface Written {
  json: Json;
  plan: Plan;
  file: WeekFile;
  readDay(json: Json): { plan: Plan | null; faults: Fault[] };
}

/** The days of a plan's week, each with its own plan, or all that is wrong with them. */
export function readWeek(written: Written): WeekReading {
  const { json, file, plan } = written;
  const days = file.days.map((day, index) => readDay(written, day, index));
  const faults = [
    ...supplyFaults(plan),
    ...repeated(locatedList(json, "week", "days"), "days", "name"),
    ...repeated(locatedList(json, "week", "orders"), "orders", "name"),
    ...overnightFaults(file, plan),
    ...orderFaults(file),
    ...countFaults(file),
    ...toldOnce(days.flatMap(({ faults }) => faults)),
  ];
  if (faults.length > 0) return { week: null, faults };
  const order = startFaults(days.map(({ day }) => day!));
  if (order.length > 0) return { week: null, faults: order };
  return {
    week: {
      begins: file.begins,
      days: days.map(({ day }) => day!),
      warmUpDays: file.warmUp,
      machinesAsNew: file.machinesAsNew,
      orders: file.orders.map((each) => toOrder(each, file)).sort((a, b) => a.bySeconds - b.bySeconds),
    },
    faults: [],
  };
}

function readDay(
  { json, plan, file, readDay }: Written,
  day: FileDay,
  index: number,
): { day: WeekDay | null; faults: Fault[] } {
  const { name } = day;
  const midnight = index * SECONDS_PER_DAY;
  if (day.closed) return { day: { name, plan: null, startSeconds: midnight }, faults: [] };
  const own = dayJson(json, (json.week as { days: Json[] }).days[index]!);
  if (file.days.slice(0, index).some(({ closed }) => !closed)) delete own.json.atStart;
  const reading = own.faults.length > 0 ? null : readDay(own.json);
  const faults = [...own.faults, ...(reading?.faults ?? [])];
  const at = formatPath(["week", "days", index]);
  if (reading?.plan == null)
    return { day: null, faults: faults.map((fault) => ({ ...fault, path: `${at}: ${fault.path}` })) };
  const different = differentPlant(plan, reading.plan);
  if (different !== null) return { day: null, faults: [{ path: at, ...different }] };
  const dayPlan = withOvernight(reading.plan, { ...file.overnight, ...day.overnight });
  return { day: { name, plan: dayPlan, startSeconds: midnight + dayPlan.day.startClockSeconds }, faults: [] };
}

/** Hours of the day as seconds after its start. */
function withOvernight(plan: Plan, hours: Record<string, number>): Plan {
  const overnight = Object.entries(hours).map(
    ([stage, hour]): Overnight => ({ stage, untilSeconds: Math.max(0, hour - plan.day.startClockSeconds) }),
  );
  return { ...plan, day: { ...plan.day, overnight } };
}

/** What is wrong with the plan's own parts comes back on every day that has them. */
function toldOnce(faults: readonly Fault[]): Fault[] {
  const told = new Set<string>();
  return faults.filter((fault) => {
    const words = formatFault({ ...fault, path: fault.path.replace(/^week\.days\[\d+\]/, "") });
    const isNew = !told.has(words);
    told.add(words);
    return isNew;
  });
}

function supplyFaults({ supply }: Plan): Fault[] {
  if (supply.kind !== "saturated") return [];
  const found = "the first stage never runs out of heads, so no day ends by itself";
  return [
    {
      path: "supply.saturated",
      found,
      allowed: "loads or a stream",
      remedy: "say when animals come, or leave out the week",
    },
  ];
}

function overnightFaults(file: WeekFile, plan: Plan): Fault[] {
  const dwells = plan.line
    .slice(killEnds(plan) + 1)
    .filter((stage) => does(stage, "hold heads"))
    .map(({ name }) => name);
  const named = [
    ...Object.keys(file.overnight).map((stage) => ["week", "overnight", stage]),
    ...file.days.flatMap(({ overnight }, day) =>
      Object.keys(overnight).map((stage) => ["week", "days", day, "overnight", stage]),
    ),
  ];
  return named.flatMap((at) => {
    const stage = String(at.at(-1));
    if (dwells.includes(stage)) return [];
    const allowed = listWords(dwells);
    return [
      {
        path: formatPath(at),
        found: `nobody may stay in '${stage}' overnight`,
        allowed,
        remedy: nearestWords(stage, dwells, "name a chiller"),
      },
    ];
  });
}

/** The last stage up to which an animal is killed and bled: none of them ever waits there for the next day. */
function killEnds({ line, day, stunned }: Plan): number {
  const named = [day.safeStop?.to, stunned?.to];
  return line.findLastIndex(({ name }) => named.includes(name) || /stun|stick|bleed/i.test(name));
}

function orderFaults({ orders, days }: WeekFile): Fault[] {
  const names = days.map(({ name }) => name);
  return orders.flatMap(({ day, carcasses, kilograms }, index) => {
    const at = (key: string) => formatPath(["week", "orders", index, key]);
    const amounts = [carcasses, kilograms].filter((amount) => amount !== undefined).length;
    const allowed = listWords(names);
    const remedy = nearestWords(day, names, "check the name");
    return [
      ...(names.includes(day) ? [] : [{ path: at("day"), found: `'${day}' is no day of the week`, allowed, remedy }]),
      ...(amounts === 1 ? [] : [amountFault(at("carcasses"), amounts)]),
    ];
  });
}

function amountFault(path: string, amounts: number): Fault {
  const found =
    amounts === 0 ? "the order says neither how many nor what weight" : "the order gives a number and a weight";
  return { path, found, allowed: 'either "carcasses" or "kilograms"', remedy: "keep one of the two" };
}

function countFaults({ days, warmUp }: WeekFile): Fault[] {
  const faults: Fault[] = [];
  if (days.every(({ closed }) => closed))
    faults.push({ path: "week.days", found: "no day has work", allowed: "at least one", remedy: "open a day" });
  else if (days.slice(warmUp).every(({ closed }) => closed))
    faults.push({
      path: "week.warmUp",
      found: `none of the days after the first ${warmUp} has work`,
      allowed: "fewer days of warm-up",
      remedy: "lower it",
    });
  return faults;
}

function startFaults(days: readonly WeekDay[]): Fault[] {
  const open = days.flatMap((day, index) => (day.plan === null ? [] : [{ ...day, index }]));
  return open.flatMap(({ startSeconds, name, index }, row) => {
    const before = open[row - 1];
    if (before === undefined || startSeconds > before.startSeconds) return [];
    const found = `${name} does not start after ${before.name}`;
    return [
      {
        path: formatPath(["week", "days", index]),
        found,
        allowed: "days one after another",
        remedy: "check the hours",
      },
    ];
  });
}

function toOrder({ name, day, by, carcasses, kilograms }: WeekFile["orders"][number], { days }: WeekFile): Order {
  const midnight = days.findIndex((each) => each.name === day) * SECONDS_PER_DAY;
  return { name, bySeconds: midnight + by, carcasses: carcasses ?? null, kilograms: kilograms ?? null };
}
