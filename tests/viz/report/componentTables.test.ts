import { parseHTML } from "linkedom";
import { expect, test } from "vitest";
import { componentTables } from "../../../viz/report/logicSection.ts";
import { exampleDay } from "../../support/exampleDay.ts";

const results = exampleDay("ferncote", "none");

test("every stage is listed with its places and positions, every crew with its people", () => {
  const { document } = parseHTML(`<main>${componentTables(results).markup}</main>`);
  const { stages, crews } = results.variants[0]!.day;
  expect(document.querySelectorAll("tbody tr")).toHaveLength(stages.length);
  for (const { name, peopleMax } of crews)
    expect(document.querySelector("main")!.textContent).toContain(`${name} ${peopleMax}`);
});

test("no limit of places is said so, also after JSON has made it null", () => {
  const stages = results.variants[0]!.day.stages.map((stage) => ({ ...stage, places: null as unknown as number }));
  const [base] = results.variants;
  const read = { ...results, variants: [{ ...base!, day: { ...base!.day, stages } }] };
  expect(componentTables(read).markup).toContain("<td>no limit</td>");
});
