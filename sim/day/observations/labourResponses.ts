import type { Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { type PaidTime, paidTime } from "./labour.ts";
import type { Response } from "./response.ts";
import { row } from "./row.ts";

/** Hours of people: on duty on the line, paid, and paid as overtime; nothing without crews. */
export function labourResponses(plan: Plan): Response[] {
  if (plan.crews.length === 0) return [];
  const paid = (of: (time: PaidTime) => number) => (day: DayRecord) =>
    plan.crews.reduce((sum, crew) => sum + of(paidTime(crew, day, plan)), 0) / 3600;
  const rows: [key: string, label: string, of: Response["of"]][] = [
    [
      "personHours",
      "Person-hours on duty on the line",
      ({ crews }) => crews.reduce((sum, crew) => sum + crew.presentSeconds, 0) / 3600,
    ],
    ["paidHours", "Paid person-hours, breaks included", paid((time) => time.regularSeconds + time.overtimeSeconds)],
    ["overtimeHours", "Paid person-hours after the last shift", paid((time) => time.overtimeSeconds)],
  ];
  return rows.map(([key, label, of]) => row(key, label, "person-hours", of, { better: "less" }));
}
