import { readFileSync } from "node:fs";
import { hostname } from "node:os";
import { kill, pid } from "node:process";

/** Tells a process from others, also from a later one with the same number. */
export interface ProcessMark {
  host: string;
  pid: number;
  /** When it began, in the system's own count; null where the system does not tell. */
  began: string | null;
}

export function ownMark(): ProcessMark {
  return { host: hostname(), pid, began: beganAt(pid) };
}

/**
 * "alive", "dead", or "elsewhere" when it belongs to another machine, of which nothing can be seen from here. A process
 * number that has been given to another process since counts as dead, as far as the system tells when processes began.
 */
export function lifeOf(mark: ProcessMark): "alive" | "dead" | "elsewhere" {
  if (mark.host !== hostname()) return "elsewhere";
  try {
    kill(mark.pid, 0);
  } catch (error) {
    // EPERM: it is there, and someone else's.
    if ((error as NodeJS.ErrnoException).code !== "EPERM") return "dead";
  }
  const began = beganAt(mark.pid);
  return mark.began === null || began === null || began === mark.began ? "alive" : "dead";
}

/** Field 22 of Linux's /proc/<pid>/stat; the second field, in brackets, may hold blanks and brackets of its own. */
function beganAt(pid: number): string | null {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, "latin1");
    return stat.slice(stat.lastIndexOf(")") + 2).split(" ")[19] ?? null;
  } catch {
    return null;
  }
}
