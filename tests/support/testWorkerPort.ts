import type { Outgoing } from "../../viz/page/worker/messages.ts";
import type { WorkerPort } from "../../viz/page/worker/workerPool.ts";

/** A worker that answers when it is told to. */
export class TestWorkerPort implements WorkerPort {
  onmessage: WorkerPort["onmessage"] = null;
  onerror: WorkerPort["onerror"] = null;
  readonly asked: Outgoing[] = [];

  postMessage(message: Outgoing): void {
    this.asked.push(message);
  }

  reply(answer: unknown): void {
    this.onmessage?.({ data: { id: this.asked.at(-1)!.id, answer } } as MessageEvent);
  }

  fail(error: string, name = "Broken"): void {
    this.onmessage?.({ data: { id: this.asked.at(-1)!.id, error, name } } as MessageEvent);
  }
}
