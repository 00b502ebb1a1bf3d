import { type Answer, type Incoming, type Outgoing, type Task, TaskCancelled } from "./messages.ts";

/** The part of a Worker that the pool needs. */
export interface WorkerPort {
  postMessage(message: Outgoing): void;
  onmessage: ((event: MessageEvent<Incoming>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

interface Job {
  task: Task;
  /** Asked when its turn comes: false drops it. */
  wanted: () => boolean;
  /** Higher goes first; equal ones in the order in which they came. */
  urgency: number;
  done: (answer: never) => void;
  failed: (error: Error) => void;
}

/** What a worker is at. */
interface Running {
  id: number;
  job: Job;
  /** Told that the answer is not wanted any more. */
  told: boolean;
}

/**
 * Hands tasks to workers, one at a time to each, the most urgent first. A task whose answer is no longer wanted is dropped
 * before it begins, and its worker told of it where it has begun; its promise is rejected with `TaskCancelled` then. Nothing here
 * computes, so the page stays free.
 */
export class WorkerPool {
  private readonly free: WorkerPort[];
  private readonly jobs: Job[] = [];
  private readonly known = new Map<WorkerPort, number>();
  private readonly running = new Map<WorkerPort, Running>();
  private next = 0;
  private studies = 0;
  readonly size: number;

  constructor(ports: WorkerPort[]) {
    this.free = [...ports];
    this.size = ports.length;
  }

  ask<Kind extends Task["kind"]>(
    task: Extract<Task, { kind: Kind }>,
    { wanted = () => true, urgency = 0 }: { wanted?: () => boolean; urgency?: number } = {},
  ): Promise<Answer<Kind>> {
    return new Promise((done, failed) => {
      const job: Job = { task, wanted, urgency, done: done as Job["done"], failed };
      const at = this.jobs.findIndex((other) => other.urgency < urgency);
      this.jobs.splice(at < 0 ? this.jobs.length : at, 0, job);
      this.withdraw();
      this.start();
    });
  }

  /** A number that no study of this pool had before: by it workers know whether they have a study's plans already. */
  newStudyNumber(): number {
    return this.studies++;
  }

  /** Does something for which a processor is needed that a worker, if one is free, would have: it rests meanwhile. */
  async withOneResting<Result>(work: () => Promise<Result>): Promise<Result> {
    const resting = this.free.pop();
    try {
      return await work();
    } finally {
      if (resting !== undefined) this.free.push(resting);
      this.start();
    }
  }

  /** Tells workers which have begun something that nobody wants now; so does every new task. */
  withdraw(): void {
    for (const [port, running] of this.running) {
      if (running.told || running.job.wanted()) continue;
      running.told = true;
      port.postMessage({ id: running.id, task: null });
    }
  }

  private start(): void {
    while (this.free.length > 0 && this.jobs.length > 0) {
      const job = this.jobs.shift()!;
      if (job.wanted()) this.give(this.free.shift()!, job);
      else job.failed(new TaskCancelled("no longer wanted"));
    }
  }

  private give(port: WorkerPort, job: Job): void {
    const id = this.next++;
    this.running.set(port, { id, job, told: false });
    const end = (finish: () => void) => {
      this.running.delete(port);
      port.onmessage = null;
      port.onerror = null;
      this.free.push(port);
      finish();
      this.start();
    };
    port.onmessage = ({ data }) => {
      if (data.id !== id) return;
      if ("error" in data && data.name === "TaskCancelled") end(() => job.failed(new TaskCancelled(data.error)));
      else if ("error" in data) end(() => job.failed(Object.assign(new Error(data.error), { name: data.name })));
      else end(() => job.done(data.answer as never));
    };
    port.onerror = (event) => end(() => job.failed(new Error(event.message || "a worker failed")));
    port.postMessage({ id, task: this.withoutKnownSource(port, job.task) });
  }

  /** A worker that has a study's plans already is not sent them again. */
  private withoutKnownSource(port: WorkerPort, task: Task): Task {
    if (task.kind !== "days") return task;
    if (this.known.get(port) === task.number) return { ...task, source: null };
    this.known.set(port, task.number);
    return task;
  }
}
