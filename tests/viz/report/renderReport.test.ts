import { createHash } from "node:crypto";
import { parseHTML } from "linkedom";
import { expect, it, test } from "vitest";
import { CAUTIONS, renderDayReport, renderReport } from "../../../viz/index.ts";
import { contentPolicy, plantSection } from "../../../viz/report/renderReport.ts";
import { exampleDay } from "../../support/exampleDay.ts";
import { HOSTILE, hostileStudy } from "../../support/hostileStudy.ts";
import { syntheticFactorial, syntheticSingleDay, syntheticStudy } from "../../support/syntheticStudy.ts";

function textOf(page: string): string {
  return parseHTML(page).document.querySelector("main")!.textContent!;
}

test("the answer comes first, then an appendix of evidence, assumptions, how to repeat it, logic and limits", () => {
  const headings = [...parseHTML(renderReport(syntheticStudy())).document.querySelectorAll("h2")].map(
    (h) => h.textContent,
  );
  expect(headings).toEqual([
    "Answer",
    "Appendix",
    "Results",
    "A day in pictures",
    "Time limits",
    "Data",
    "Experimentation",
    "Implementation and code access",
    "Logic",
    "Limits of the model",
  ]);
});

test("all but the first pages is closed, and the list of contents leads into each part by its name", () => {
  const { document } = parseHTML(renderReport(syntheticStudy()));
  const parts = [...document.querySelectorAll("details.part")];
  expect(parts.length).toBeGreaterThan(6);
  expect(parts.filter((part) => part.hasAttribute("open"))).toEqual([]);
  expect(document.querySelectorAll("section.first details.part")).toHaveLength(0);
  const led = [...document.querySelectorAll(".contents a")].map((link) => {
    const part = document.querySelector(link.getAttribute("href")!)!.closest("details")!;
    return [link.textContent, part.querySelector("h2")!.textContent];
  });
  expect(led).toHaveLength(parts.length);
  for (const [name, title] of led) expect(name).toBe(title);
});

test("the cautions stand in the report in full", () => {
  const text = textOf(renderReport(syntheticStudy()));
  for (const caution of CAUTIONS) expect(text).toContain(caution);
});

test("every source, the command, the seed and the version are stated", () => {
  const study = syntheticStudy();
  const text = textOf(renderReport(study));
  for (const { note } of study.plan.sources) expect(text).toContain(note);
  for (const part of [study.study.command, study.study.seed, `gambrel ${study.gambrel}`]) expect(text).toContain(part);
});

test("a plan that names no source has all its figures called assumed", () => {
  const study = syntheticStudy();
  study.plan.sources = [];
  expect(textOf(renderReport(study))).toContain("Treat every one of them as assumed.");
});

test("the page asks for nothing from outside, and its policy lets nothing run but its own script", () => {
  const page = renderReport(syntheticStudy());
  const { document } = parseHTML(page);
  const policy = document.querySelector("meta[http-equiv=Content-Security-Policy]")!.getAttribute("content")!;
  const scripts = [...document.querySelectorAll("script")].filter((script) => !script.hasAttribute("type"));
  expect(scripts).toHaveLength(1);
  const digest = createHash("sha256").update(scripts[0]!.textContent!).digest("base64");
  expect(policy).toContain(`default-src 'none'; style-src 'sha256-`);
  expect(policy).toContain(`script-src 'sha256-${digest}'; base-uri 'none'; form-action 'none'`);
  expect(page.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|<link|src=|@import| style="/);
});

test("every figure of the plan is listed with its source when the plan file is at hand", () => {
  const study = syntheticStudy();
  const planFile = { name: "x", target: "600 /h", line: [{ name: "a", cycle: "5 s" }] };
  const { document } = parseHTML(renderReport(study, { planFile }));
  const rows = [...document.querySelectorAll(".inputs tbody tr")].map((row) => row.textContent);
  expect(rows).toHaveLength(2);
  expect(rows[1]).toContain("line.a.cycle5 sinvented");
  expect(renderReport(study)).not.toContain('class="inputs"');
});

test("no two elements of the page share an id", () => {
  const ids = [...renderReport(syntheticFactorial()).matchAll(/ id="([^"]+)"/g)].map((match) => match[1]);
  expect(new Set(ids).size).toBe(ids.length);
});

test("hostile names stay text: no element, attribute or style of theirs comes to be", () => {
  const page = renderReport(hostileStudy());
  const { document } = parseHTML(page);
  expect(document.querySelectorAll("img, iframe, main style, [onerror], [onload]").length).toBe(0);
  const own = [...document.querySelectorAll("script")];
  expect(own.filter((script) => script.getAttribute("type") !== "application/json")).toHaveLength(1);
  for (const script of own.slice(0, -1)) expect(() => JSON.parse(script.textContent!)).not.toThrow();
  expect(page.match(/<script/g)).toHaveLength(own.length);
  expect(page.match(/<\/script/g)).toHaveLength(own.length);
  for (const control of ["\u0000", "\u202E", "\u2067"]) expect(page.includes(control)).toBe(false);
  expect(textOf(page)).toContain(HOSTILE[1]);
});

test("every response has its interval and each variant its difference, shown or not shown", () => {
  const text = textOf(renderReport(syntheticStudy()));
  expect(text).toContain("589 heads/h586 to 591");
  expect(text).toContain("difference +1.0 heads/h (\u22120.1 to +2.1): not shown");
});

test("a single day shows no interval and says so", () => {
  const text = textOf(renderDayReport(syntheticSingleDay()));
  expect(text).toContain("One simulated day; another would differ.");
  expect(text).not.toMatch(/at 95 %|± |Student/);
  expect(text).toContain("595 heads/h");
});

test("renderDayReport refuses a study, whose intervals it would hide", () => {
  expect(() => renderDayReport(syntheticStudy())).toThrow(/4 variants and 20 replications; a day is 1 and 1/);
});

test("renderReport refuses a study without variants", () => {
  expect(() => renderReport({ ...syntheticStudy(), variants: [] })).toThrow(/no variant/);
});

test("the same results give the same page to the last byte", () => {
  expect(renderReport(syntheticStudy())).toBe(renderReport(syntheticStudy()));
});

// SHA-256 of "abc", FIPS 180-2 appendix B.1: ba7816bf 8f01cfea 414140de 5dae2223 b00361a3 96177a9c b410ff61 f20015ad.
const ABC = Buffer.from("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", "hex").toString("base64");

test("nothing is allowed but the given style and script, by their SHA-256", () => {
  expect(contentPolicy("abc", "abc")).toBe(
    `default-src 'none'; style-src 'sha256-${ABC}'; script-src 'sha256-${ABC}'; base-uri 'none'; form-action 'none'`,
  );
  expect(contentPolicy("abc", "abd")).not.toBe(contentPolicy("abc", "abc"));
});

it("stands in the report of a plan that takes something off, and in no other", () => {
  const { document } = parseHTML(`<main>${plantSection(exampleDay("parts/presentation", "none"))!.markup}</main>`);
  expect([...document.querySelectorAll("h2, h3")].map(({ textContent }) => textContent)).toEqual([
    "What goes through the plant",
    "Mass balance",
    "Costs and margin",
  ]);
  expect(plantSection(exampleDay("parts/gate", "none"))).toBeNull();
});
