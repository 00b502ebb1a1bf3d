import { z } from "zod";
import type { Incoming, Outgoing } from "./messages.ts";
import { TaskHandler } from "./taskHandler.ts";

// Zod would build its checks with eval, which the page's policy forbids.
z.config({ jitless: true });

/** The part of a worker's global scope that is used here. */
interface Scope {
  onmessage: ((event: MessageEvent<Outgoing>) => void) | null;
  postMessage(message: Incoming): void;
}

const scope = globalThis as unknown as Scope;
const handler = new TaskHandler();

let unwanted = -1;

scope.onmessage = async ({ data: { id, task } }) => {
  if (task === null) {
    unwanted = id;
    return;
  }
  try {
    const answer = await handler.answer(task, () => unwanted !== id);
    // Copied, not handed over: a buffer once handed over has every access to any array checked from then on.
    scope.postMessage({ id, answer });
  } catch (error) {
    const { name, message } = error instanceof Error ? error : { name: "Error", message: String(error) };
    scope.postMessage({ id, error: message, name });
  }
};
