import { closeSync, openSync, readSync } from "node:fs";

const BLOCK_BYTES = 1 << 20;
const NEW_LINE = 0x0a;
/** A day with every step of its course is some megabytes; a file that is none of ours may have no line break at all. */
const LONGEST_LINE_BYTES = 1 << 26;

export interface JournalLine {
  text: string;
  /** Number of bytes up to and with the line's end. */
  endByte: number;
}

/**
 * The whole lines of a file, one after another: a journal can be longer than a text may be. What stands behind the last
 * line break is left out; it was being written when the run was killed. Throws a `RangeError` at a line of more than
 * 64 MB.
 */
export function* journalLines(path: string): Generator<JournalLine> {
  const file = openSync(path, "r");
  try {
    const block = Buffer.alloc(BLOCK_BYTES);
    let begun: Buffer[] = [];
    let begunBytes = 0;
    let blockAt = 0;
    for (let got = readSync(file, block); got > 0; got = readSync(file, block)) {
      let from = 0;
      for (let end = block.indexOf(NEW_LINE); end !== -1 && end < got; end = block.indexOf(NEW_LINE, from)) {
        const text = Buffer.concat([...begun, block.subarray(from, end)]).toString("utf8");
        yield { text, endByte: blockAt + end + 1 };
        [begun, begunBytes, from] = [[], 0, end + 1];
      }
      // Copied, since the block is filled anew.
      begun.push(Buffer.from(block.subarray(from, got)));
      begunBytes += got - from;
      if (begunBytes > LONGEST_LINE_BYTES) throw new RangeError("journalLines: a line is longer than any day");
      blockAt += got;
    }
  } finally {
    closeSync(file);
  }
}
