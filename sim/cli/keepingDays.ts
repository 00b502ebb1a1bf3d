import { Stopped } from "./badInput.ts";
import type { Terminal } from "./terminal.ts";

/** A journal as far as its end goes. */
interface Kept {
  folder: string;
  keep(): number;
  discard(): void;
}

export interface KeepingWords {
  /** What the run comes to (" of 600"); "" where nobody knows beforehand. */
  ofAll: string;
  /** The command line that goes on. */
  goOn: string;
}

/**
 * Ends a journal when the work is done. After a stop or a failure the days simulated so far stay, and it is said where
 * they are and how to go on with them.
 */
export async function keepingDays<Result>(
  terminal: Terminal,
  journal: Kept,
  { ofAll, goOn }: KeepingWords,
  work: () => Promise<Result>,
): Promise<Result> {
  try {
    const result = await work();
    journal.discard();
    return result;
  } catch (error) {
    const days = journal.keep();
    if (days === 0) throw error;
    const kept = `${days}${ofAll} days are kept in ${journal.folder}. Go on with: ${goOn}`;
    if (error instanceof Stopped) throw new Stopped(error.signal, `Stopped. ${kept}`);
    terminal.say(kept);
    throw error;
  }
}
