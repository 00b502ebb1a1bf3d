import { type Fault, formatPath, isRecord, type Plan } from "../../../asked/plan/index.ts";
import type { AskedLimit } from "../question.ts";
import type { ImproveFile } from "../schema/improveFile.ts";

/** What of a question needs a plan with a week, or says nothing of one. */

export function weekFaults({ week }: Plan): Fault[] {
  if (week !== undefined) return [];
  const remedy = 'name a plan with a "week", or move the hours of a day with "times"';
  return [{ path: "allocate.week", found: "the plan is of one day alone", allowed: "a plan with a week", remedy }];
}

export function orderLimitFaults({ orders }: Pick<ImproveFile, "orders">, { week }: Plan): Fault[] {
  if (orders === undefined || (week !== undefined && week.orders.length > 0)) return [];
  const found = "the plan has no orders";
  return [{ path: "orders", found, allowed: "a plan whose week has orders", remedy: "leave it out" }];
}

/** The share of orders that may be late as a limit beside those of heads. */
export function ordersLimit({ orders }: Pick<ImproveFile, "orders">): AskedLimit[] {
  return orders === undefined ? [] : [{ name: "orders", key: "ordersMet", share: orders, of: "orders" }];
}

type Asked = NonNullable<ImproveFile["allocate"]["times"]>;

/** Hours of the plan's usual day that no day of its week goes by: each has lorries, shifts or breaks of its own. */
export function unusedFaults({ among }: Asked, { plan, json }: { plan: Plan; json: unknown }): Fault[] {
  if (plan.week === undefined) return [];
  const { days } = (json as { week: { days: Record<string, unknown>[] } }).week;
  const open = days.filter(({ closed }) => closed !== true);
  return among.flatMap((entry, index): Fault[] => {
    const part = entry.shift !== undefined ? "shifts" : entry.break !== undefined ? "breaks" : "loads";
    if (open.some((day) => day[part] === undefined && !setsPart(day, part))) return [];
    const found = `every day of the week has ${part} of its own, so moving the plan's moves nothing`;
    const remedy = 'move it on its day: "allocate": { "week": ... }, with "on" and the day';
    return [
      {
        path: formatPath(["allocate", "times", "among", index]),
        found,
        allowed: `a day with the plan's ${part}`,
        remedy,
      },
    ];
  });
}

function setsPart({ set }: Record<string, unknown>, part: string): boolean {
  return isRecord(set) && Object.keys(set).some((path) => path === `day.${part}` || path === `supply.${part}`);
}
