import { batch, effect } from "@preact/signals";
import type { Plan } from "../../../sim/asked/plan/index.ts";
import { parseJson } from "../../../sim/asked/plan/index.ts";
import type { Study } from "../../../sim/asked/study/index.ts";
import type { DayCourse } from "../../../sim/day/course/index.ts";
import type { StudyResults } from "../../../sim/days/results/index.ts";
import type { DaySource } from "../../../sim/days/run/index.ts";
import { askQuestion, askWorlds, BaseDays } from "../worker/askQuestion.ts";
import { type Question, type QuestionReading, TaskCancelled } from "../worker/messages.ts";
import { warmUpWorkers } from "../worker/warmUpWorkers.ts";
import type { WorkerPool } from "../worker/workerPool.ts";
import * as state from "./state.ts";

/** Name of the measures that tell how long the figures took after a change (performance.getEntriesByName). */
export const UPDATE_MEASURE = "figures after a change";
/** The same for the first figures, of fewer days, where all of them took long. */
export const FIRST_MEASURE = "first figures after a change";

/** Figures that are wanted; plans of worlds where each day is to be in one of its own. */
interface Work {
  study: Study;
  source: DaySource;
  worldPlans: readonly Plan[] | null;
  key: string;
  wanted: () => boolean;
  began: number;
}

/** Who does the work of the page. */
interface Workers {
  /** They read the plan, simulate days and put the figures together. */
  days: WorkerPool;
  /** For the days that are drawn: what keeps a whole day would have the others' machine code made anew for both. */
  pictures: WorkerPool;
  /** The processor has cores enough to make the picture while days are simulated. */
  isRoomForBoth: boolean;
}

/**
 * Asks the workers whenever the plan, a control, the seed or the day changes, and puts their answers into the state. Only
 * the latest question counts; while it is answered the picture and the figures of the one before stay.
 */
export class QuestionRunner {
  private readonly pool: WorkerPool;
  private readonly pictures: WorkerPool;
  private readonly isRoomForBoth: boolean;
  private readonly base = new BaseDays();
  private isWarm = false;
  private asked = 0;
  private drawn = 0;
  private baseCourse: { key: string; course: DayCourse } | null = null;

  constructor({ days, pictures, isRoomForBoth }: Workers) {
    this.pool = days;
    this.pictures = pictures;
    this.isRoomForBoth = isRoomForBoth;
  }

  /** Starts answering; gives the function that stops it. */
  start(): () => void {
    return effect(() => {
      const question: Question = {
        plan: state.plan.value,
        set: state.changes.value,
        seed: state.seed.value,
        replications: state.REPLICATIONS,
        inWorlds: state.inWorlds.value,
      };
      const replication = state.replication.value;
      void this.ask(question, replication).catch((error: unknown) => {
        if (error instanceof TaskCancelled) return;
        batch(() => {
          state.progress.value = null;
          state.stale.value = false;
          state.failure.value = error instanceof Error ? error.message : String(error);
        });
      });
    });
  }

  private async ask(question: Question, replication: number): Promise<void> {
    if (question.plan.text === "") return;
    const began = performance.now();
    const number = ++this.asked;
    const wanted = () => number === this.asked;
    this.pictures.withdraw();
    const reading = await this.pool.ask<"read">({ kind: "read", question }, { wanted, urgency: 3 });
    if (!wanted()) return;
    this.tell(question, reading);
    const { study, source, worldPlans } = reading;
    if (study === null || source === null) return;
    const key = JSON.stringify([question.plan, question.seed, study.responses]);
    const plans = study.variants.map(({ plan }) => plan);
    const draw = () => this.draw(question, plans, replication, wanted);
    const work = () => this.work({ study, source, worldPlans, key, wanted, began });
    if (this.isRoomForBoth) await Promise.all([draw(), work()]);
    // Nothing is to be seen before the first picture: it comes as if alone.
    else if (state.courses.base.peek() === null) await Promise.all([this.pool.withOneResting(draw), work()]);
    else {
      // The picture before can stay until the figures are there.
      await work();
      await draw();
    }
    if (this.isWarm) return;
    this.isWarm = true;
    await warmUpWorkers(this.pool, source, wanted);
  }

  /** Brings the figures: those of the days so far when all of them take long, then those of all days. */
  private async work({ study, source, worldPlans, key, wanted, began }: Work): Promise<void> {
    state.stale.value = true;
    const progress = (done: number, total: number) => {
      state.progress.value = { done, total };
    };
    const onPartialResults = (results: StudyResults) => {
      if (!wanted() || state.progress.value === null || worldPlans !== null) return;
      batch(() => {
        state.results.value = results;
        state.knownResults.value = null;
        state.stale.value = false;
      });
      performance.measure(FIRST_MEASURE, { start: began });
    };
    const known = await askQuestion(this.pool, {
      study,
      source,
      base: this.base,
      key,
      wanted,
      progress,
      onPartialResults,
    });
    if (!wanted()) return;
    const drawn = worldPlans && (await askWorlds(this.pool, { study, source, plans: worldPlans, wanted, progress }));
    if (!wanted()) return;
    batch(() => {
      state.results.value = drawn ?? known;
      state.knownResults.value = drawn && known;
      state.stale.value = false;
      state.progress.value = null;
      state.failure.value = null;
    });
    performance.measure(UPDATE_MEASURE, { start: began });
  }

  private tell({ plan }: Question, { faults, variantFaults, warnings }: QuestionReading): void {
    batch(() => {
      state.faults.value = faults;
      state.variantFaults.value = variantFaults;
      state.warnings.value = warnings;
      if (faults.length === 0) state.soundPlan.value = sameOr(state.soundPlan.value, parseJson(plan.text).value);
      else state.progress.value = null;
    });
  }

  /** Brings the courses of both lines; that of the base is kept as long as its plan, seed and day stay. */
  private async draw(question: Question, plans: Plan[], replication: number, wanted: () => boolean): Promise<void> {
    const number = ++this.drawn;
    const latest = () => wanted() && number === this.drawn;
    const { seed, plan } = question;
    const key = JSON.stringify([plan, seed, replication]);
    const record = (of: Plan) =>
      this.pictures.ask<"course">({ kind: "course", plan: of, seed, replication }, { wanted: latest });
    const known = this.baseCourse?.key === key ? this.baseCourse.course : null;
    let courses: [DayCourse, DayCourse | null];
    try {
      courses = await Promise.all([known ?? record(plans[0]!), plans[1] === undefined ? null : record(plans[1])]);
    } catch (error) {
      if (!(error instanceof Error) || error.name !== COURSE_TOO_LONG) throw error;
      if (latest()) state.tooLong.value = true;
      return;
    }
    if (!latest()) return;
    const [base, variant] = courses;
    this.baseCourse = { key, course: base };
    show(base, variant ?? base);
  }
}

/** Name of the error of a day that cannot be kept whole, as it comes from a worker. */
const COURSE_TOO_LONG = "CourseTooLong";

function show(base: DayCourse, variant: DayCourse): void {
  batch(() => {
    state.courses.base.value = base;
    state.courses.variant.value = variant;
    state.tooLong.value = false;
  });
  state.clock.setEnd(Math.max(base.record.finishSeconds, variant.record.finishSeconds));
  if (state.startAt.value !== null) state.clock.moveTo(state.startAt.value - base.record.startClockSeconds);
  state.startAt.value = null;
}

/** The old value where the new one says the same: nothing is made anew that has not changed. */
function sameOr(old: unknown, fresh: unknown): unknown {
  return JSON.stringify(old) === JSON.stringify(fresh) ? old : fresh;
}
