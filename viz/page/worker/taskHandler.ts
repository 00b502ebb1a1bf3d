import { type DayCourse, recordInParts } from "../../../sim/day/course/index.ts";
import { advance, type DayState, startDay } from "../../../sim/day/engine/index.ts";
import { compileLine } from "../../../sim/day/line/index.ts";
import { DaySimulator, type DaySource, runStudy } from "../../../sim/days/run/index.ts";
import { type Answer, type Task, TaskCancelled } from "./messages.ts";
import { readQuestion } from "./readQuestion.ts";

/** Does the tasks of one worker; keeps the compiled lines of the study it last worked on. */
export class TaskHandler {
  private number = -1;
  private simulator: DaySimulator | null = null;
  private held: DayState | null = null;

  /** Rejected with `TaskCancelled` where the answer is not wanted any more and much of the work is still to be done. */
  async answer(task: Task, wanted: () => boolean = () => true): Promise<Answer<Task["kind"]>> {
    switch (task.kind) {
      case "read":
        return readQuestion(task.question);
      case "course":
        return this.record(task, wanted);
      case "days":
        return this.simulate(task);
      case "results":
        // Every day is known: nothing is simulated here, the study is only put together.
        return runStudy(task.study, {
          gambrel: __VERSION__,
          command: "",
          traces: "none",
          journal: { known: task.days, note: () => {} },
        });
    }
  }

  /** A picture takes longer than many days: the worker looks now and then whether the next question has come. */
  private async record(task: Extract<Task, { kind: "course" }>, wanted: () => boolean): Promise<DayCourse> {
    const parts = recordInParts(compileLine(task.plan), task);
    for (;;) {
      const { done, value } = parts.next();
      if (done) return value;
      await messagesIn();
      if (!wanted()) throw new TaskCancelled("no longer wanted");
    }
  }

  private simulate({ number, source, batch }: Extract<Task, { kind: "days" }>): Answer<"days"> {
    if (source !== null && number !== this.number) {
      this.simulator = new DaySimulator(source);
      this.number = number;
    }
    if (this.simulator === null) throw new Error("a worker was asked for days of a study it does not have");
    const result = this.simulator.simulateBatch(batch);
    if (source !== null && result.failed.length === 0) this.held ??= wholeDay(source);
    return result;
  }
}

/**
 * A day that was run to its end and is kept, never to be asked for. Browsers throw away the machine code they made for the
 * engine once no day is left in memory, which is so between any two questions, and would translate it anew for the next.
 */
function wholeDay({ plans, seed, mostEvents }: DaySource): DayState {
  const line = compileLine(plans[0]!);
  const day = startDay(line, { seed, replication: 0, mostEvents });
  advance(day, line.ceilingSeconds);
  return day;
}

/** Lets the messages in that came meanwhile; a timer would wait for longer. */
function messagesIn(): Promise<void> {
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(null);
  });
}
