import { isRecord } from "../../../sim/asked/plan/index.ts";
import { readClock, readQuantity, time } from "../../../sim/text/units/index.ts";

/** The planned breaks of a sound plan's JSON, seconds after the day's start. */
export function breaksOf(
  plan: unknown,
  startClockSeconds: number,
): { name: string; fromSeconds: number; toSeconds: number }[] {
  const day = isRecord(plan) && isRecord(plan.day) ? plan.day : {};
  const breaks = Array.isArray(day.breaks) ? day.breaks.filter(isRecord) : [];
  return breaks.flatMap(({ name, at, length }) => {
    const [from, seconds] = [readClock(at).value, readQuantity(time, length).value];
    if (from === null || seconds === null) return [];
    const fromSeconds = from - startClockSeconds;
    return [{ name: String(name), fromSeconds, toSeconds: fromSeconds + seconds }];
  });
}
