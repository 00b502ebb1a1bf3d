import type { Reading } from "../../text/units/index.ts";
import type { TextFiles } from "./textFiles.ts";

/** The text of a file that a plan or study names; `allowed` says what may be named there. A byte order mark is dropped. */
export function readNamedFile(path: string, files: TextFiles, allowed: string): Reading<string> {
  try {
    return { value: files.readText(path).replace(/^\uFEFF/u, ""), fault: null };
  } catch (error) {
    const found = `'${path}' cannot be read (${reasonOf(error)})`;
    return { value: null, fault: { found, allowed, remedy: "check the path" } };
  }
}

/** Systems word these differently, and add the whole path. */
const REASONS: Record<string, string> = {
  ENOENT: "there is no such file",
  EISDIR: "it is a folder",
  EACCES: "it may not be read",
};

function reasonOf(error: unknown): string {
  const { code, message } = error as { code?: string; message?: string };
  return REASONS[code ?? ""] ?? message ?? String(error);
}
