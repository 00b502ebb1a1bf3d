import type { Plan, Vessel } from "../../asked/plan/index.ts";
import type { VesselRecord } from "../engine/index.ts";
import type { Response } from "./response.ts";
import { row } from "./row.ts";

/** How often each vessel was emptied, how full it got, and what came of its being full: stages that stood, or a spill. */
export function vesselResponses(plan: Plan): Response[] {
  return plan.vessels.flatMap(ofVessel);
}

function ofVessel({ name, whenFull }: Vessel): Response[] {
  const read =
    (of: (record: VesselRecord) => number): Response["of"] =>
    ({ vessels }) => {
      const record = vessels.find((vessel) => vessel.name === name);
      return record === undefined ? null : of(record);
    };
  const [emptied, most] = [read((vessel) => vessel.emptied), read((vessel) => vessel.maxKg)];
  const [spilled, full] = [read((vessel) => vessel.spilledKg), read((vessel) => vessel.fullSeconds)];
  return [
    row(`vessel.${name}.emptied`, `${name}: emptied`, "times", emptied),
    row(`vessel.${name}.max`, `${name}: most in it`, "kg", most),
    whenFull === "spill"
      ? row(`vessel.${name}.spilled`, `${name}: spilled`, "kg", spilled, { better: "less" })
      : row(`vessel.${name}.full`, `${name}: full, so that its stages stood still`, "s", full, {
          format: "duration",
          better: "less",
        }),
  ];
}
