/** Where a step is a text in an array, it is the `name` of one of its elements. */
export type PathStep = string | number;

const STEP = /\.?(?:(?<key>[^.[\]"]+)|\[(?<index>\d{1,9})\]|\[(?<quoted>"(?:[^"\\]|\\.)*")\])/uy;

/**
 * Takes a path apart: "line.skinning.buffer", "line[3].buffer", 'line["four-leg cutting"].positions'. Names with dots,
 * brackets or quotes go in brackets as JSON text; names with spaces may stand either way. Null when it cannot be read.
 */
export function parsePath(path: string): PathStep[] | null {
  const steps: PathStep[] = [];
  STEP.lastIndex = 0;
  while (STEP.lastIndex < path.length) {
    const atStart = STEP.lastIndex === 0;
    const match = STEP.exec(path);
    if (match === null || !joinedProperly(match, atStart)) return null;
    steps.push(stepOf(match.groups as Record<string, string | undefined>));
  }
  return steps.length === 0 || steps.includes("") ? null : steps;
}

/** A key needs a dot before it, unless it comes first; a bracket needs none, and nothing begins with a dot. */
function joinedProperly(match: RegExpExecArray, atStart: boolean): boolean {
  const dot = match[0].startsWith(".");
  const isKey = match.groups?.key !== undefined;
  return isKey ? dot !== atStart : !dot;
}

function stepOf(groups: Record<string, string | undefined>): PathStep {
  if (groups.index !== undefined) return Number(groups.index);
  if (groups.quoted !== undefined) return unquoted(groups.quoted);
  return groups.key ?? "";
}

function unquoted(text: string): string {
  try {
    return JSON.parse(text) as string;
  } catch {
    return "";
  }
}
