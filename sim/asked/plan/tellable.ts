import type { Fault } from "./fault.ts";
import { DEEPEST } from "./findJsonFault.ts";

const TOO_DEEP: Fault = {
  path: "",
  found: "brackets nested too deep",
  allowed: `at most ${DEEPEST} levels of brackets`,
  remedy: "remove levels",
};

/**
 * JSON of which every part can be put into words, as those who look for faults in it do: the same value, but that an object
 * with a `toString` or `valueOf` of its own (which JavaScript would call, and fail) says that it is an object. `fault` where
 * it is nested so deep that nothing could walk through it.
 */
export function tellable(json: unknown): { json: unknown; fault: null } | { json: null; fault: Fault } {
  return isTooDeep(json, 0) ? { json: null, fault: TOO_DEEP } : { json: told(json), fault: null };
}

function isTooDeep(value: unknown, depth: number): boolean {
  if (typeof value !== "object" || value === null) return false;
  return depth > DEEPEST || Object.values(value).some((each) => isTooDeep(each, depth + 1));
}

/** The value itself where nothing in it needs a word: most plans are large, and are read a thousand times. */
function told(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) {
    const list = value.map(told);
    return list.some((each, index) => each !== value[index]) ? list : value;
  }
  const entries = Object.entries(value).map(([key, each]) => [key, told(each)] as const);
  const isOdd = Object.hasOwn(value, "toString") || Object.hasOwn(value, "valueOf");
  if (!isOdd && entries.every(([key, each]) => each === (value as Record<string, unknown>)[key])) return value;
  const object: Record<string | symbol, unknown> = Object.fromEntries(entries);
  if (isOdd) object[Symbol.toPrimitive] = () => "an object";
  return object;
}
