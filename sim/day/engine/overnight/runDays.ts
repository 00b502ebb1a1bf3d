import type { CompiledLine } from "../../line/index.ts";
import type { DayRecord, DaysRecord, PlacedOrder } from "../dayRecord.ts";
import { isClear } from "../leaveLine.ts";
import { recordOf } from "../recordOf.ts";
import { advance, type DayBefore, startDay } from "../runDay.ts";
import type { DayOptions, DayState } from "../state/dayState.ts";
import { LotBook } from "./lots.ts";
import { OrderBook } from "./orderBook.ts";

/** One working day of several. */
export interface WorkingDay {
  line: CompiledLine;
  /** Start of its clock after that of the first one, seconds; ascending. */
  startSeconds: number;
  /** Its number among all days of the calendar, those without work included: it names the day's chance. */
  number: number;
}

/** `startSeconds` of the days and the times of orders count from the same moment. */
export interface DaysOptions extends Omit<DayOptions, "goesOn" | "warmUpHeads"> {
  /** Days of the calendar, those without work included: so a day has the same chance whichever others are worked on. */
  calendarDays: number;
  /** Machines begin every day as new, as a day alone does. Default: their uptimes go on from day to day. */
  machinesAsNew?: boolean;
  /** In the order of their times. Default: none. */
  orders?: readonly PlacedOrder[];
}

/**
 * Simulates working days one after another. What physically stays is carried over (see overnight/carryOver.ts). Day `number`
 * of replication r has the chance of replication r x calendarDays + number of a day alone: where nothing is carried over, its
 * record is that of the day alone. Pure function of its arguments; throws what `runDay` throws.
 */
export function runDays(days: readonly WorkingDay[], options: DaysOptions): DaysRecord {
  const { calendarDays, machinesAsNew = false, orders = [], ...dayOptions } = options;
  const orderBook = new OrderBook(orders);
  const records: DayRecord[] = [];
  const book = new LotBook();
  let before: DayBefore | null = null;
  let status: DaysRecord["status"] = "finished";
  for (const [row, { line, startSeconds, number }] of days.entries()) {
    const day: DayState = startDay(
      line,
      { ...dayOptions, replication: options.replication * calendarDays + number, goesOn: row < days.length - 1 },
      before,
    );
    day.leaves = (kilograms) => orderBook.leave(kilograms, startSeconds + day.now);
    book.begin(day, row, startSeconds);
    const ended = endOf(day);
    records.push(recordOf(day, ended));
    const next = days[row + 1];
    const later = next === undefined ? Infinity : next.startSeconds - startSeconds;
    status = ended === "finished" && day.now > later ? "overrun" : ended;
    if (status !== "finished") break;
    before = { day, secondsBefore: later, machinesAsNew };
  }
  return { days: records, lots: book.lots(), orders: orderBook.close(), status };
}

/** Crates that nobody brings further today wait for tomorrow: that is an end like any other. */
function endOf(day: DayState): DayRecord["status"] {
  const status = advance(day, day.line.ceilingSeconds);
  if (status === "running") return "ceiling";
  if (status !== "stuck" || day.options.goesOn !== true || !isClear(day)) return status;
  day.path?.dayEnds();
  return "finished";
}
