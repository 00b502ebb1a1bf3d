/** A key that can stand behind a dot. */
const PLAIN_KEY = /^[\p{L}_$][\p{L}\p{N}_$-]*$/u;

/** Steps into a JSON document as people read them: ["line", 4, "crew"] is "line[4].crew"; odd keys in brackets. */
export function formatPath(steps: readonly PropertyKey[]): string {
  let path = "";
  for (const step of steps) {
    if (typeof step === "number") path += `[${step}]`;
    else if (!PLAIN_KEY.test(String(step))) path += `[${JSON.stringify(step)}]`;
    else path += path === "" ? String(step) : `.${String(step)}`;
  }
  return path;
}
