import { closeSync, constants, openSync, writeSync } from "node:fs";

/** Written out when so much has come together, or so long after the first of it. */
const MAX_CHARACTERS = 1 << 18;
const LONGEST_MS = 250;
const NEW_LINE = 0x0a;
/** A link in the file's place is not followed: it could lead to any file of the user. Not known on every system. */
const NO_LINK = constants.O_NOFOLLOW ?? 0;

/**
 * Adds lines to a file, many at a time: what is lost to a kill is a quarter of a second, and simulated again. After a
 * failure (a full disk) nothing more is written, so that the file ends in the line that broke off; `add` and `close`
 * throw it.
 */
export class JournalWriter {
  readonly #file: number;
  #waiting: string[] = [];
  #characters = 0;
  #timer: NodeJS.Timeout | null = null;
  #failure: unknown = null;
  /** Whole lines in the file by this writer. */
  lines = 0;

  constructor(path: string) {
    this.#file = openSync(path, constants.O_WRONLY | constants.O_CREAT | constants.O_APPEND | NO_LINK, 0o666);
  }

  add(line: string): void {
    if (this.#failure !== null) throw this.#failure;
    this.#waiting.push(line, "\n");
    this.#characters += line.length + 1;
    if (this.#characters >= MAX_CHARACTERS) this.flush();
    else this.#timer ??= setTimeout(() => this.#flushLater(), LONGEST_MS);
  }

  flush(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    if (this.#failure !== null) throw this.#failure;
    const bytes = Buffer.from(this.#waiting.join(""));
    this.#waiting = [];
    this.#characters = 0;
    try {
      for (let done = 0; done < bytes.length; ) {
        const written = writeSync(this.#file, bytes, done);
        this.lines += bytes.subarray(done, done + written).filter((byte) => byte === NEW_LINE).length;
        done += written;
      }
    } catch (error) {
      this.#failure = error;
      throw error;
    }
  }

  close(): void {
    try {
      this.flush();
    } finally {
      closeSync(this.#file);
    }
  }

  /** Nobody could catch what a timer throws: it waits for the next call. */
  #flushLater(): void {
    try {
      this.flush();
    } catch {}
  }
}
