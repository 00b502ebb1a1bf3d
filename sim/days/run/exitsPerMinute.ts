import { advance, type DayOptions, startDay } from "../../day/engine/index.ts";
import type { CompiledLine } from "../../day/line/index.ts";

const MINUTE = 60;
/** So little below a time that nothing lies between (half a unit in the last place, rounded down). */
const JUST_BEFORE = 1 - 2 ** -53;

/**
 * Carcasses that left the line in each whole minute of a day of a line whose first stage never runs out of heads; the
 * minutes after the last head was taken are left out, since the line runs empty then. A carcass on the stroke of a
 * minute counts to the one that begins. The day is played anew, minute by minute: nothing of its course is kept.
 */
export function exitsPerMinute(line: CompiledLine, options: DayOptions): number[] {
  const day = startDay(line, options);
  const carcasses: number[] = [];
  const taken: number[] = [];
  let status: ReturnType<typeof advance> = "running";
  for (let end = MINUTE; status === "running" && end <= line.ceilingSeconds; end += MINUTE) {
    status = advance(day, end * JUST_BEFORE);
    carcasses.push(day.out[0]!);
    taken.push(day.hung);
  }
  if (status === "running") advance(day, line.ceilingSeconds);
  const whole = taken.indexOf(day.hung);
  return carcasses.slice(0, whole === -1 ? undefined : whole).map((out, minute) => out - (carcasses[minute - 1] ?? 0));
}
