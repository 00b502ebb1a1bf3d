import type { Pace } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";

type FilePace = (PlanFile["line"][number] & { kind: "chain" })["pace"];

export function toPace(file: FilePace, start: number): Pace[] {
  return file.map(({ from, speed, atMost }) => ({ fromSeconds: from - start, speed, mostPerSecond: atMost }));
}
