import { resolve } from "node:path";

/** Names of what a folder of an unfinished run holds. */
export const HEADER = "header.json";
export const DAYS = "journal.jsonl";
export const LOCK = "lock.json";
export const TAKEOVER = "lock-takeover";

export const PARTS: ReadonlySet<string> = new Set([HEADER, DAYS, LOCK, TAKEOVER]);

/** Where the days of a run into `folder` are kept until it is finished: a folder beside it. */
export function partialFolder(folder: string): string {
  // Resolved only as far as needed to take a closing slash away: messages show the path as it was written.
  const plain = folder.replace(/(?<=.)[\\/]+$/, "");
  return `${/(^|[\\/])\.{0,2}$/.test(plain) ? resolve(plain) : plain}.partial`;
}
