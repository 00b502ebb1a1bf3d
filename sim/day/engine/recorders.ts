import { type CompiledLine, DWELL } from "../line/index.ts";
import type { HeadTable, StepTrace, Traces } from "./dayRecord.ts";
import { HeadLog } from "./headLog.ts";
import type { HeadWatcher } from "./headWatcher.ts";
import { StateRecorder } from "./stateTraces.ts";
import { BinnedRecorder, ExactRecorder, type StepRecorder, stepBudget } from "./stepTraces.ts";

export interface RecorderOptions {
  traces?: "none" | "binned" | "exact";
  perHead?: boolean;
  watcher?: HeadWatcher;
}

/** Heads that came by a point so far. */
export class HeadCounter {
  private heads = 0;
  private readonly recorder: StepRecorder;

  constructor(recorder: StepRecorder) {
    this.recorder = recorder;
  }

  pass(now: number): void {
    this.recorder.set(now, ++this.heads);
  }

  trace(name: string, end: number): StepTrace {
    return this.recorder.trace(name, end);
  }
}

/** The recorders of a day whose course is wanted; a day without them pays one comparison a change. */
export class Recorders {
  readonly queues: StepRecorder[];
  readonly sections: StepRecorder[];
  readonly out: StepRecorder;
  readonly arrived: StepRecorder;
  readonly hung: HeadCounter;
  /** By stage; null where no head dwells. */
  readonly entered: readonly (HeadCounter | null)[];
  readonly states: StateRecorder[];
  /** Who is told of every head; the table of a run that asks for it, or the caller's own. */
  readonly heads: HeadWatcher | null;
  private readonly log: HeadLog | null;
  private readonly busy: StepRecorder[];
  private readonly present: StepRecorder[];
  private readonly line: CompiledLine;
  private readonly traced: boolean;

  /** Null when nothing is to be recorded. */
  static wanted(options: RecorderOptions, line: CompiledLine): Recorders | null {
    const { traces = "none", perHead = false, watcher } = options;
    if (perHead && watcher !== undefined) throw new RangeError("a day has either a table of heads or a watcher");
    return traces === "none" && !perHead && watcher === undefined
      ? null
      : new Recorders(traces, perHead ? new HeadLog(line.stages.count) : null, watcher ?? null, line);
  }

  private constructor(
    traces: "none" | "binned" | "exact",
    log: HeadLog | null,
    watcher: HeadWatcher | null,
    line: CompiledLine,
  ) {
    const budget = stepBudget();
    const recorder = () => (traces === "exact" ? new ExactRecorder(budget) : new BinnedRecorder());
    this.line = line;
    this.traced = traces !== "none";
    this.queues = line.stages.names.map(recorder);
    this.sections = line.sectionNames.map(recorder);
    this.out = recorder();
    this.arrived = recorder();
    this.hung = new HeadCounter(recorder());
    this.entered = Array.from(line.stages.kind, (kind) => (kind === DWELL ? new HeadCounter(recorder()) : null));
    this.states = line.stages.names.map(() => new StateRecorder());
    this.busy = line.crews.names.map(recorder);
    this.present = line.crews.names.map(recorder);
    this.log = log;
    this.heads = watcher ?? log;
  }

  headTable(): HeadTable | null {
    return this.log?.table() ?? null;
  }

  /** A crew's numbers from `since` on, noted when that time is booked. */
  crew(crew: number, since: number, busy: number, present: number): void {
    this.busy[crew]!.set(since, busy);
    this.present[crew]!.set(since, present);
  }

  traces(end: number): Traces | null {
    if (!this.traced) return null;
    const { stages, sectionNames, crews } = this.line;
    return {
      queues: this.queues.map((recorder, stage) => recorder.trace(stages.names[stage]!, end)),
      wip: this.sections.map((recorder, section) => recorder.trace(sectionNames[section]!, end)),
      out: this.out.trace("carcasses out", end),
      arrived: this.arrived.trace("heads arrived", end),
      hung: this.hung.trace("heads hung", end),
      entered: this.entered.flatMap((counter, stage) => counter?.trace(stages.names[stage]!, end) ?? []),
      crews: crews.names.map((name, crew) => {
        return { name, busy: this.busy[crew]!.trace(name, end), present: this.present[crew]!.trace(name, end) };
      }),
      states: this.states.map((recorder, stage) => recorder.trace(stages.names[stage]!, end)),
    };
  }
}
