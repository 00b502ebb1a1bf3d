import type { Plan } from "../../../asked/plan/index.ts";
import type { OrderRecord } from "../../engine/index.ts";
import type { WeekResponse } from "./weekResponse.ts";

/** Whether orders are ready at their times, how late, and what is missing then; nothing without orders. */
export function orderResponses(plan: Plan): WeekResponse[] {
  const { orders } = plan.week!;
  if (orders.length === 0) return [];
  return [
    allMet(),
    ...orders.flatMap(({ name, carcasses }, row) => [late(name, row), short(name, row, carcasses !== null)]),
  ];
}

function allMet(): WeekResponse {
  return {
    ...{
      key: "ordersMet",
      label: "Orders ready at their times",
      unit: "share of orders",
      format: "share",
      better: "more",
    },
    needs: [],
    of: (_, { orders }) => orders.filter(isMet).length / orders.length,
  };
}

function late(name: string, row: number): WeekResponse {
  return {
    ...{ key: `order.${name}.late`, label: `Order ${name}: late by`, unit: "s", format: "duration", better: "less" },
    meaning: "0 where it is ready in time; no value where it is never ready.",
    needs: [],
    of: (_, { orders }) => lateness(orders[row]!),
  };
}

function short(name: string, row: number, counted: boolean): WeekResponse {
  const unit = counted ? "carcasses" : "kg";
  return {
    ...{
      key: `order.${name}.short`,
      label: `Order ${name}: missing at its time`,
      unit,
      format: "number",
      better: "less",
    },
    needs: [],
    of: (_, { orders }) => orders[row]!.short,
  };
}

function isMet(order: OrderRecord): boolean {
  return lateness(order) === 0;
}

function lateness({ filledSeconds, bySeconds }: OrderRecord): number | null {
  return filledSeconds === null ? null : Math.max(0, filledSeconds - bySeconds);
}
