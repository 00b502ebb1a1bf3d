import type { TextFiles } from "../plan/index.ts";

const readOnceAlready = new WeakSet<TextFiles>();

/**
 * The same files, each read once: a study reads its plan's tables for every variant. A failure is remembered too. Files
 * that come from here are handed back as they are.
 */
export function readOnce(files: TextFiles): TextFiles {
  if (readOnceAlready.has(files)) return files;
  const once = remembering(files);
  readOnceAlready.add(once);
  return once;
}

function remembering(files: TextFiles): TextFiles {
  const known = new Map<string, () => string>();
  return {
    readText(path) {
      const before = known.get(path);
      if (before !== undefined) return before();
      const now = outcome(() => files.readText(path));
      known.set(path, now);
      return now();
    },
  };
}

function outcome(read: () => string): () => string {
  try {
    const text = read();
    return () => text;
  } catch (error) {
    return () => {
      throw error;
    };
  }
}
