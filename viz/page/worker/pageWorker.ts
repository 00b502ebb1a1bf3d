import { z } from "zod";
import { Answerer } from "./answer.ts";
import type { Incoming, Outgoing } from "./messages.ts";
import { buffersOf } from "./transfer.ts";

// Zod would build its checks with eval, which the page's policy forbids.
z.config({ jitless: true });

/** The part of a worker's global scope that is used here. */
interface Scope {
  onmessage: ((event: MessageEvent<Outgoing>) => void) | null;
  postMessage(message: Incoming, transfer?: Transferable[]): void;
}

const scope = globalThis as unknown as Scope;
const answerer = new Answerer();

scope.onmessage = async ({ data: { id, task } }) => {
  try {
    const answer = await answerer.answer(task);
    scope.postMessage({ id, answer }, task.kind === "course" ? buffersOf(answer) : []);
  } catch (error) {
    const { name, message } = error instanceof Error ? error : { name: "Error", message: String(error) };
    scope.postMessage({ id, error: message, name });
  }
};
