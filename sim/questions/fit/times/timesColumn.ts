import type { Subject } from "./subject.ts";

/** One column of times, in the order of the file. */
export interface TimesColumn {
  /** As the file has it, without the unit. */
  heading: string;
  subject: Subject;
  /** One of the plan's units of time; `times` are in it. */
  unit: string;
  times: ObservedTime[];
}

export interface ObservedTime {
  value: number;
  /** Still going on when the watching stopped. */
  open: boolean;
  line: number;
}
