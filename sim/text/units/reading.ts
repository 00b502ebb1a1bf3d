/** What is wrong with one written value: data first, wording for people. The reader of the file adds where it stands. */
export interface ReadingFault {
  found: string;
  allowed: string;
  remedy: string;
}

/** A value that was read, or the reason why it could not be. */
export type Reading<Value> = { value: Value; fault: null } | { value: null; fault: ReadingFault };

export function read<Value>(value: Value): Reading<Value> {
  return { value, fault: null };
}

export function refused(found: string, allowed: string, remedy: string): Reading<never> {
  return { value: null, fault: { found, allowed, remedy } };
}
