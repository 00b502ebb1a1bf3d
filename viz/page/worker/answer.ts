import { recordCourse } from "../../../sim/course/index.ts";
import { compileLine } from "../../../sim/line/index.ts";
import { DaySimulator, runStudy } from "../../../sim/run/index.ts";
import type { Answer, Task } from "./messages.ts";
import { readQuestion } from "./readQuestion.ts";

/** Does the tasks of one worker; keeps the compiled lines of the study it last worked on. */
export class Answerer {
  private number = -1;
  private simulator: DaySimulator | null = null;

  async answer(task: Task): Promise<Answer<Task["kind"]>> {
    switch (task.kind) {
      case "read":
        return readQuestion(task.question);
      case "course":
        return recordCourse(compileLine(task.plan), task);
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

  private simulate({ number, source, batch }: Extract<Task, { kind: "days" }>): Answer<"days"> {
    if (source !== null && number !== this.number) {
      this.simulator = new DaySimulator(source);
      this.number = number;
    }
    if (this.simulator === null) throw new Error("a worker was asked for days of a study it does not have");
    return this.simulator.simulateBatch(batch);
  }
}
