import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { readInputFile } from "../../../sim/cli/inputFile.ts";
import { openedPlan, pageWithPlan } from "../../../sim/cli/openedPlan.ts";
import { SMALL_PLAN } from "../../support/smallPlan.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

it("takes the files along that a plan reads, by the names it reads them with", () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "times.csv"), "seconds\n8.1\n7.9\n");
  const line = SMALL_PLAN.line.map((stage) =>
    stage.name === "stunning"
      ? { ...stage, cycle: { empirical: { csv: "times.csv", column: "seconds", unit: "s" } } }
      : stage,
  );
  writeFileSync(join(folder, "plan.json"), JSON.stringify({ ...SMALL_PLAN, line }));
  const opened = openedPlan(readInputFile(join(folder, "plan.json")));
  expect(opened.name).toBe("plan.json");
  expect(opened.files).toEqual({ "times.csv": "seconds\n8.1\n7.9\n" });
});

it("puts a plan into the page as data that cannot end its block, whatever it says", () => {
  const plan = { name: "a.json", text: '</script><script>alert("$&")</script>', files: {} };
  const page = pageWithPlan("<body>page</body>", plan);
  expect(page.match(/<script/gu)).toHaveLength(1);
  const data = /<script type="application\/json" id="opened-plan">(.*)<\/script>/su.exec(page)![1]!;
  expect(JSON.parse(data)).toEqual(plan);
  expect(pageWithPlan("<body>page</body>", null)).toBe("<body>page</body>");
});
