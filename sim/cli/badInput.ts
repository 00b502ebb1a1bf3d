/** Something a person wrote is not as it must be: one line for each fault. */
export class BadInput extends Error {
  readonly lines: readonly string[];
  /** Documents of the project that say how it must be, by their paths in it. */
  readonly guides: readonly string[];

  constructor(lines: readonly string[], guides: readonly string[] = []) {
    super(lines.join("\n"));
    this.name = "BadInput";
    this.lines = lines;
    this.guides = guides;
  }
}

export const PLAN_GUIDE = "sim/asked/plan/README.md";
export const STUDY_GUIDE = "sim/asked/study/README.md";
export const SIZE_GUIDE = "sim/questions/size/README.md";
export const OPTIONS_GUIDE = "sim/questions/options/README.md";
export const IMPROVE_GUIDE = "sim/questions/improve/README.md";

/** What ends a program politely: the terminal is closed, Ctrl-C, a polite kill. */
export const SIGNALS = ["SIGHUP", "SIGINT", "SIGTERM"] as const;
export type StopSignal = (typeof SIGNALS)[number];

/** Thrown between two days after Ctrl-C, a polite kill, or when the terminal was closed. */
export class Stopped extends Error {
  readonly signal: StopSignal;

  constructor(signal: StopSignal, message = "Stopped. Nothing was written.") {
    super(message);
    this.name = "Stopped";
    this.signal = signal;
  }
}
