/** The queue cannot be used: one sentence for people, without any password. */
export class QueueProblem extends Error {
  constructor(message: string) {
    super(message);
    this.name = "QueueProblem";
  }
}
