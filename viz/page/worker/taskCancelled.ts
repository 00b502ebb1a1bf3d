/** A task that was dropped because nobody wants its answer any more. */
export class TaskCancelled extends Error {
  override name = "TaskCancelled";
}
