import { closeSync, openSync, writeSync } from "node:fs";

/** Written out when so much has come together, or so long after the first of it. */
const MOST_CHARACTERS = 1 << 18;
const LONGEST_MS = 250;

/** Adds lines to a file, many at a time: what is lost to a kill is a quarter of a second, and simulated again. */
export class JournalWriter {
  readonly #file: number;
  #waiting: string[] = [];
  #characters = 0;
  #timer: NodeJS.Timeout | null = null;

  constructor(path: string) {
    this.#file = openSync(path, "a");
  }

  add(line: string): void {
    this.#waiting.push(line, "\n");
    this.#characters += line.length + 1;
    if (this.#characters >= MOST_CHARACTERS) this.flush();
    else this.#timer ??= setTimeout(() => this.flush(), LONGEST_MS);
  }

  flush(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    const bytes = Buffer.from(this.#waiting.join(""));
    this.#waiting = [];
    this.#characters = 0;
    for (let done = 0; done < bytes.length; ) done += writeSync(this.#file, bytes, done);
  }

  close(): void {
    this.flush();
    closeSync(this.#file);
  }
}
