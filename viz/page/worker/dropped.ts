/** A task that was dropped because nobody wants its answer any more. */
export class Dropped extends Error {
  override name = "Dropped";
}
