import { relative } from "node:path";
import { cwd } from "node:process";

/** A path as the user would write it: short where it lies in or below the folder they are in. */
export function pathFromHere(path: string): string {
  const short = relative(cwd(), path);
  return short.startsWith("..") ? path : short;
}
