import { scaleLinear } from "d3";
import type { ChartFrame, ChartWords, TimeScale } from "../frame/index.ts";

/** Steps of the board: shifts begin and end on half hours. */
export const BOARD_STEP_SECONDS = 1800;

/** People of one crew on one day: means of half hours from the start of the day's clock. */
export interface BoardCrewDay {
  startClockSeconds: number;
  /** The most that any of its shifts has that day. */
  people: number;
  busyShare: number;
  busy: readonly number[];
  present: readonly number[];
}

/** A lot while it is hung, seconds after the day's midnight; its number is that of the table of lots. */
export interface BoardLot {
  number: number;
  from: number;
  to: number;
  words: string;
}

/** A day of the calendar; times in seconds after its midnight. */
export interface BoardDay {
  name: string;
  /** "17 March"; "" where the plan names no date. */
  date: string;
  works: boolean;
  notes: readonly string[];
  shiftEnd: number | null;
  workEnd: number | null;
  pauses: readonly { from: number; to: number }[];
  crews: readonly BoardCrewDay[];
  lots: readonly BoardLot[];
}

/** What something holds, on each day of work, as steps over the clock after midnight. */
export interface BoardFill {
  name: string;
  largest: number;
  /** Drawn as a line; null draws none. */
  places: number | null;
  days: readonly { times: readonly number[]; values: readonly number[] }[];
}

/** An order on the day that it is due. */
export interface BoardOrder {
  day: number;
  at: number;
  met: boolean;
  name: string;
  /** "in time", or what is missing at its time. */
  state: string;
}

export interface WeekBoardColumns extends ChartWords {
  /** The hours that every day shows, seconds after midnight. */
  fromSeconds: number;
  toSeconds: number;
  days: readonly BoardDay[];
  crews: readonly { name: string; largest: number }[];
  fills: readonly BoardFill[];
  orders: readonly BoardOrder[];
  footnote: string;
}

/** Where the rows of a day stand: tops, in pixels; null where there is none. */
export interface BoardRows {
  crews: readonly number[];
  lots: number | null;
  orders: readonly { label: OrderLabel; top: number }[] | null;
  fills: readonly number[];
  top: number;
  bottom: number;
}

/** An order's words on the side of its mark that has room. */
export interface OrderLabel {
  order: BoardOrder;
  /** Of the mark. */
  x: number;
  side: "left" | "right";
  lines: readonly string[];
}

/** A board while it is drawn. */
export interface Board {
  frame: ChartFrame;
  columns: WeekBoardColumns;
  /** Pixels for the names of the rows. */
  gutter: number;
  paints: { busy: string; over: string; evenLot: string; oddLot: string };
}

/** Ends of a day on the picture, pixels. */
export interface DaySpan {
  left: number;
  right: number;
}

/** Height of a row's marks, pixels. */
export const BOARD_ROW = { crew: 21, lotTrack: 15, fill: 52 };

export function boardTime({ fromSeconds, toSeconds }: WeekBoardColumns, { left, right }: DaySpan): TimeScale {
  return scaleLinear().domain([fromSeconds, toSeconds]).range([left, right]);
}

/** Pixels that the figure of an hour takes. */
const HOUR_ROOM = 20;

/** The full hours that have room for their figure. */
export function boardHours({ fromSeconds, toSeconds }: WeekBoardColumns, { left, right }: DaySpan): number[] {
  const room = ((right - left) * 3600) / (toSeconds - fromSeconds);
  const step = [1, 2, 3, 4, 6].find((hours) => hours * room >= HOUR_ROOM) ?? 12;
  const first = Math.ceil(fromSeconds / 3600 / step) * step;
  const hours: number[] = [];
  for (let hour = first; hour * 3600 <= toSeconds; hour += step) hours.push(hour);
  return hours;
}
