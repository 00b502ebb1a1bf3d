import { createHash } from "node:crypto";
import type { DaySource } from "../index.ts";
import { exactJson } from "./exactJson.ts";

/**
 * SHA-256 (hexadecimal) over everything that days and their number depend on, beside the program itself: two sources with
 * the same digest give the same days. Whether conservation is checked on the way is left out, since it changes no day.
 */
export function sourceDigest({ seed, procedure, keys, traces, plans }: DaySource): string {
  const hash = createHash("sha256");
  hash.update(exactJson({ seed, procedure, keys, traces }));
  for (const plan of plans) hash.update(`\n${exactJson(plan)}`);
  return hash.digest("hex");
}
