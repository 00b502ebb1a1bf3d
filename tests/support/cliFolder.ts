import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { SMALL_PLAN } from "./smallPlan.ts";
import { temporaryFolder } from "./temporaryFolder.ts";

/** A study of the small plan: one more person at skinning, or more places before it. Invented. */
export const SMALL_STUDY = {
  name: "Skinners & places",
  question: "What is a fourth person at skinning worth?",
  plan: "plan.json",
  seed: "7",
  replications: 5,
  responses: ["headsPerHour", "finish", "beyond.stun to skinning"],
  design: {
    list: [
      {
        name: "+1 person",
        set: { "crews.dressing.people": { early: 4 }, "line.skinning.positions": 4 },
      },
      { name: "same again", set: { "line.skinning.buffer": 6 } },
    ],
  },
};

/** A folder with plan.json, study.json and any other files given. */
export function cliFolder(others: Record<string, unknown> = {}): string {
  const folder = temporaryFolder();
  for (const [name, content] of Object.entries({ "plan.json": SMALL_PLAN, "study.json": SMALL_STUDY, ...others })) {
    writeFileSync(join(folder, name), typeof content === "string" ? content : JSON.stringify(content, null, 2));
  }
  return folder;
}
