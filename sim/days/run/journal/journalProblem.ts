/** The journal in the way of a run, or not fit for it: one sentence with the folder and what to do. */
export class JournalProblem extends Error {
  constructor(message: string) {
    super(message);
    this.name = "JournalProblem";
  }
}
