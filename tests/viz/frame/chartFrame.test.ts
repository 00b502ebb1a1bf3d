import { expect, test } from "vitest";
import { chartFrame, emptyChart } from "../../../viz/frame/index.ts";
import { testContext, textsOf } from "../../support/drawing.ts";

const WORDS = { title: "Heads", caption: "What to look for", subtitle: "per hour", description: "More before noon." };

test("a chart is one image to a screen reader, with its title and its finding as text", () => {
  const svg = chartFrame(WORDS, testContext()).finish(100);
  expect(svg.getAttribute("role")).toBe("img");
  expect(svg.getAttribute("aria-labelledby")).toBe("test-title test-desc");
  expect(svg.querySelector("title")?.textContent).toBe("Heads");
  expect(svg.querySelector("desc")?.textContent).toBe("More before noon.");
});

test("the viewport ends a margin below the lower edge that the chart reports", () => {
  const svg = chartFrame(WORDS, testContext({ width: 600 })).finish(100);
  expect(svg.getAttribute("viewBox")).toBe("0 0 600 112");
});

test("the theme auto carries its style sheet unless the page has it, a fixed theme never does", () => {
  const styles = (context: ReturnType<typeof testContext>) =>
    chartFrame(WORDS, context).finish(9).querySelectorAll("style").length;
  expect(styles(testContext({ theme: "auto" }))).toBe(1);
  expect(styles(testContext({ theme: "auto", styleInside: false }))).toBe(0);
  expect(styles(testContext({ theme: "dark" }))).toBe(0);
});

test("emptyChart says in words, seen and read out, why there is no picture", () => {
  const svg = emptyChart(WORDS, "Nothing waited.", testContext());
  expect(textsOf(svg)).toEqual(["Heads", "Nothing waited."]);
  expect(svg.querySelector("desc")?.textContent).toBe("Nothing waited.");
});

test("the caption, which says what to see, stands between the heading and what is drawn", () => {
  expect(textsOf(chartFrame(WORDS, testContext()).finish(100))).toEqual(["Heads", "What to look for", "per hour"]);
  expect(textsOf(chartFrame({ ...WORDS, caption: "" }, testContext()).finish(100))).toEqual(["Heads", "per hour"]);
});

test("notes stand below the picture: nothing to say takes no room, each line takes its own", () => {
  const height = (...notes: string[]) => {
    const svg = chartFrame({ title: "t", caption: "", subtitle: "", description: "" }, testContext()).finish(
      100,
      ...notes,
    );
    return Number(svg.getAttribute("height"));
  };
  const bare = height();
  expect(height("")).toBe(bare);
  expect(height("Left out: trim.")).toBe(bare + 14);
  expect(height("Left out: trim.", "Not drawn: hanging.")).toBe(bare + 28);
  expect(height("a long list of names, ".repeat(12))).toBeGreaterThan(bare + 14);
});
