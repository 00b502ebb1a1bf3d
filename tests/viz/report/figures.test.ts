import { parseHTML } from "linkedom";
import { expect, test } from "vitest";
import { serverDocument } from "../../../viz/index.ts";
import { figuresFor } from "../../../viz/report/figures.ts";
import { dayCharts, responseCharts } from "../../../viz/report/studyCharts.ts";
import { exampleDay } from "../../support/exampleDay.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

function drawn(charts: Parameters<ReturnType<typeof figuresFor>>[0]) {
  return parseHTML(`<main>${figuresFor(serverDocument())(charts).markup}</main>`).document;
}

test("each figure has its picture, its finding and its table, and can be reached by keyboard", () => {
  const charts = responseCharts(syntheticStudy());
  const figures = [...drawn(charts).querySelectorAll("figure")];
  expect(figures).toHaveLength(charts.length);
  for (const figure of figures) {
    expect(figure.querySelector(".plot[tabindex='0'][role=group] svg")).not.toBeNull();
    expect(figure.querySelector("figcaption")!.textContent).toMatch(/^Figure \d+\. .{20}/);
    expect(figure.querySelectorAll("details table tbody tr").length).toBeGreaterThan(0);
    expect(figure.querySelector("script")).toBeNull();
  }
});

test("pictures over the clock carry what is to be read off them", () => {
  const results = exampleDay("parts/crews");
  const charts = dayCharts(results, results.variants[0]!, "day");
  const document = drawn(charts);
  const over = charts.filter(({ readings }) => readings !== null).length;
  for (const kind of ["wide", "phone"])
    expect(document.querySelectorAll(`.plot.${kind}[data-over-time]`)).toHaveLength(over);
  const data = [...document.querySelectorAll("script.readings")].map((script) => JSON.parse(script.textContent!));
  expect(data).toHaveLength(over);
  for (const { end } of data) expect(end).toBeGreaterThan(0);
  for (const svg of document.querySelectorAll("[data-over-time] svg"))
    expect(Number(svg.getAttribute("data-time-bottom"))).toBeGreaterThan(Number(svg.getAttribute("data-time-top")));
});
