import { type Fault, formatPath, listWords, nearestWords } from "../plan/index.ts";

/** The responses asked for that are not among the known ones. */
export function responseFaults(responses: readonly string[], known: readonly string[]): Fault[] {
  return responses.flatMap((response, index) => {
    if (known.includes(response)) return [];
    const remedy = nearestWords(response, known, "take one of these");
    return [
      {
        path: formatPath(["responses", index]),
        found: `'${response}' is no response`,
        allowed: listWords(known),
        remedy,
      },
    ];
  });
}
