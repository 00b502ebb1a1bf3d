import { closeSync, constants, fstatSync, openSync, readSync } from "node:fs";
import { TextDecoder } from "node:util";

const BYTES_PER_MEGABYTE = 1_000_000;
const BLOCK_BYTES = 1 << 16;
/** Opening a pipe must not wait for somebody to write into it. Not known on every system. */
const NO_WAITING = constants.O_NONBLOCK ?? 0;

/** A file that can be opened and still is nothing to read; the message is the reason with its remedy. */
export class UnreadableFile extends Error {}

/**
 * The text of a UTF-8 file of at most so many megabytes. Pipes and devices are refused: they may have no end, or nobody
 * at the other one. Throws an `UnreadableFile`, or the system's own error where the file cannot be opened.
 */
export function readTextFile(path: string, mostMegabytes: number): string {
  if (path.includes("\0")) throw new UnreadableFile("a path cannot hold the character NUL");
  const file = openSync(path, constants.O_RDONLY | NO_WAITING);
  try {
    const about = fstatSync(file);
    if (about.isDirectory()) throw new UnreadableFile("this is a folder; name a file in it");
    if (!about.isFile()) throw new UnreadableFile("this is a pipe or a device; save what it gives as a file first");
    return decoded(boundedBytes(file, mostMegabytes));
  } finally {
    closeSync(file);
  }
}

/** What a file says of its size is not relied on: it may grow, and some of the system's own say nothing. */
function boundedBytes(file: number, mostMegabytes: number): Buffer {
  const blocks: Buffer[] = [];
  let bytes = 0;
  for (;;) {
    const block = Buffer.alloc(BLOCK_BYTES);
    const got = readSync(file, block);
    if (got === 0) return Buffer.concat(blocks);
    bytes += got;
    if (bytes > mostMegabytes * BYTES_PER_MEGABYTE) throw new UnreadableFile(tooLarge(mostMegabytes));
    blocks.push(block.subarray(0, got));
  }
}

function tooLarge(mostMegabytes: number): string {
  return `this is larger than ${mostMegabytes} MB; is it the right file? If so, raise the ceiling: --ceiling megabytes=${mostMegabytes * 10}`;
}

function decoded(bytes: Buffer): string {
  // Without a byte order mark it would pass for UTF-8 with a NUL in every other place.
  if (bytes.length > 1 && (bytes[0] === 0) !== (bytes[1] === 0))
    throw new UnreadableFile("this is text in UTF-16; save it as UTF-8 first");
  try {
    // A byte order mark stays, for those who read the text to skip.
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new UnreadableFile("this is not text in UTF-8; save it as UTF-8 first");
  }
}
