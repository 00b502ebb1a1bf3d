import { closeSync, openSync, readSync } from "node:fs";

const BLOCK_BYTES = 1 << 20;
const NEW_LINE = 0x0a;

export interface JournalLine {
  text: string;
  /** Number of bytes up to and with the line's end. */
  endByte: number;
}

/**
 * The whole lines of a file, one after another: a journal can be longer than a text may be. What stands behind the last
 * line break is left out; it was being written when the run was killed.
 */
export function* journalLines(path: string): Generator<JournalLine> {
  const file = openSync(path, "r");
  try {
    let rest = Buffer.alloc(0);
    let restAt = 0;
    const block = Buffer.alloc(BLOCK_BYTES);
    for (let got = readSync(file, block); got > 0; got = readSync(file, block)) {
      rest = Buffer.concat([rest, block.subarray(0, got)]);
      let from = 0;
      for (let end = rest.indexOf(NEW_LINE); end !== -1; end = rest.indexOf(NEW_LINE, from)) {
        yield { text: rest.toString("utf8", from, end), endByte: restAt + end + 1 };
        from = end + 1;
      }
      rest = rest.subarray(from);
      restAt += from;
    }
  } finally {
    closeSync(file);
  }
}
