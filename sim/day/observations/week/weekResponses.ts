import type { Plan } from "../../../asked/plan/index.ts";
import { needsBinding } from "../binding/bindingKeys.ts";
import { reasonResponses } from "../binding/reasonResponses.ts";
import type { ResponseInfo } from "../responseInfo.ts";
import { responseList } from "../responseList.ts";
import { dayAndMoneyKeys, usualOfDay } from "../usualOfDay.ts";
import { cutShortResponses } from "./cutShortResponses.ts";
import { orderResponses } from "./orderResponses.ts";
import { overDays, sumOf } from "./overDays.ts";
import { restResponses } from "./restResponses.ts";
import { countedDays, countedRecords, type WeekResponse } from "./weekResponse.ts";

/** Sums over the week that say something; of those, what the plan has. */
const SUMMED = [
  ...["carcasses", "carcassKg", "liveKg", "overtime", "paidHours", "overtimeHours"],
  ...["cost.processing", "cost.total", "revenue", "margin", "fullMargin", "water", "energy"],
];

/**
 * What can be measured of a plan's week. Each response of a day under its own key, over all days (see `overDays`): so a study
 * of weeks is read like one of days. Sums under `week.KEY`, single days under `DAY.KEY`, with what each day's end was owed to, and
 * orders and hours of rest.
 */
export function weekResponses(plan: Plan): WeekResponse[] {
  const ofDay = responseList(plan).filter(({ key }) => !needsBinding(key));
  const listed = new Set([...dayAndMoneyKeys(plan), ...usualOfDay(plan), ...SUMMED]);
  return [
    ...ofDay.map((info) => overWeek(plan, info)),
    ...ofDay.filter(({ key }) => SUMMED.includes(key)).map(summed),
    made(plan),
    ...countedDays(plan).flatMap(({ name }, row) => leftBefore(plan, name, row)),
    ...orderResponses(plan),
    ...restResponses(plan),
    ...cutShortResponses(plan),
    ...countedDays(plan).flatMap((day, row) =>
      [...ofDay.filter(({ key }) => listed.has(key)), ...reasonResponses(day.plan)].map((info) =>
        ofOneDay(info, day.name, row),
      ),
    ),
  ];
}

const BEYOND = "beyond.";

function overWeek(plan: Plan, info: ResponseInfo): WeekResponse {
  if (info.key.startsWith(BEYOND)) return beyond(plan, info);
  return info.key === "unfinished" ? unfinished(info) : overAllDays(info);
}

function unfinished({ key, unit, format, better }: ResponseInfo): WeekResponse {
  const label = "Weeks cut short: a day did not end by itself, or not before the next one";
  return { key, label, unit, format, better, needs: [], of: (_, { status }) => (status === "finished" ? 0 : 1) };
}

/** Of all heads of the week that passed the limit. */
function beyond(plan: Plan, { key, label, unit, format, better }: ResponseInfo): WeekResponse {
  const info = { key, label: `${label}, of all days together`, unit, format, better };
  return {
    ...info,
    needs: [],
    of: (_, record) => {
      const limits = countedRecords(plan, record).flatMap((day) => day.limits);
      const these = limits.filter(({ name }) => name === key.slice(BEYOND.length));
      const passed = these.reduce((sum, { tally }) => sum + tally.count, 0);
      return passed === 0 ? null : these.reduce((sum, limit) => sum + limit.beyond, 0) / passed;
    },
  };
}

function overAllDays({ key, label, unit, format, better, meaning }: ResponseInfo): WeekResponse {
  const over = overDays({ key, better });
  const info = {
    key,
    label: `${label}, ${over.words}`,
    unit,
    format,
    better,
    ...(meaning === undefined ? {} : { meaning }),
  };
  const needs = over.weight === null ? [key] : [key, over.weight];
  return { ...info, needs, of: (days) => over.of(days(key), over.weight === null ? [] : days(over.weight)) };
}

function summed({ key, label, unit, format, better }: ResponseInfo): WeekResponse {
  const info = { key: `week.${key}`, label: `Week: ${label}`, unit, format, better };
  return { ...info, needs: [key], of: (days) => sumOf(days(key)) };
}

/** What a week handles, however many carcasses wait for the next one: a later hour on Friday leaves more of them in the chiller, and none fewer made. */
function made(plan: Plan): WeekResponse {
  return {
    ...{
      key: "week.made",
      label: "Week: carcasses made, those that stay in the chiller at its end included",
      unit: "carcasses",
    },
    ...{ format: "number", better: "more", needs: ["carcasses"] },
    of: (days, record) => {
      const [out, counted] = [sumOf(days("carcasses")), countedRecords(plan, record)];
      if (out === null || counted.length === 0) return null;
      return out + counted.at(-1)!.heads.onLine - counted[0]!.heads.fromBefore.onLine;
    },
  };
}

/** What a day begins with: of a plan's first day, nothing. */
function leftBefore(plan: Plan, day: string, row: number): WeekResponse[] {
  const response = (
    key: string,
    label: string,
    of: (heads: { inLairage: number; onLine: number }) => number,
  ): WeekResponse => ({
    ...{
      key: `${day}.left.${key}`,
      label: `${day}: ${label}, left by the days before`,
      unit: key,
      format: "number",
      better: "less",
      needs: [],
    },
    of: (_, record) => {
      const found = countedRecords(plan, record)[row];
      return found === undefined ? null : of(found.heads.fromBefore);
    },
  });
  return [
    response("heads", "animals in their crates in the morning", ({ inLairage }) => inLairage),
    response("carcasses", "carcasses on the line in the morning, in chillers above all", ({ onLine }) => onLine),
  ];
}

function ofOneDay({ key, label, unit, format, better }: ResponseInfo, day: string, row: number): WeekResponse {
  const info = { key: `${day}.${key}`, label: `${day}: ${label}`, unit, format, better };
  return { ...info, needs: [key], of: (days) => days(key)[row] ?? null };
}

/** True where some of the keys are of what a day's end was owed to. */
export function weekNeedsBinding(plan: Plan, keys: readonly string[]): boolean {
  const days = countedDays(plan).map(({ name }) => `${name}.`);
  return keys.some((key) => days.some((day) => key.startsWith(day) && needsBinding(key.slice(day.length))));
}
