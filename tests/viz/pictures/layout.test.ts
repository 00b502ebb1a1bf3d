import { parseHTML } from "linkedom";
import { describe, expect, it } from "vitest";
import { layoutChart, layoutSheet, layoutTable, serverDocument, svgText } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { CHAINS, FERNCOTE, LARGE, SMALL, USUAL } from "../../support/layoutCases.ts";

interface Box {
  title: string;
  x: number;
  y: number;
  width: number;
  height: number;
}

/** The sheet as another program finds it in the file: millimetres. */
function readBack(svg: string) {
  const { document } = parseHTML(`<!doctype html><html><body>${svg}</body></html>`);
  const root = document.querySelector("svg")!;
  const number = (element: Element, name: string) => Number(element.getAttribute(name));
  const boxes = (id: string): Box[] =>
    [...root.querySelectorAll(`#${id} rect`)].map((rect) => ({
      title: rect.querySelector("title")?.textContent ?? "",
      ...{ x: number(rect, "x"), y: number(rect, "y"), width: number(rect, "width"), height: number(rect, "height") },
    }));
  const rail = [...root.querySelectorAll("#rail polyline")].map((line) => {
    const spots = line
      .getAttribute("points")!
      .split(" ")
      .map((spot) => spot.split(",").map(Number) as [number, number]);
    const length = spots
      .slice(1)
      .reduce((sum, [x, y], index) => sum + Math.hypot(x - spots[index]![0], y - spots[index]![1]), 0);
    return { title: line.querySelector("title")!.textContent!, length, spots };
  });
  const texts = [...root.querySelectorAll("text")].map((text) => text.textContent ?? "");
  const size = ["width", "height"].map((name) => root.getAttribute(name)!);
  return {
    size,
    viewBox: root.getAttribute("viewBox")!,
    rooms: boxes("rooms"),
    building: boxes("building")[0]!,
    bar: boxes("scale-bar"),
    rail,
    texts,
  };
}

/** A thousandth of a millimetre of paper for each of two edges. */
const ROUNDED = 0.002;
const CASES = [SMALL, USUAL, LARGE, FERNCOTE, CHAINS].map((of) => of());

describe.each(CASES)("the sheet of $name, read back from its file", ({ layout, plan }) => {
  const made = layoutSheet(layout, serverDocument());
  const sheet = readBack(svgText(made.svg));

  it("is in millimetres: one unit of its coordinates is one of its paper", () => {
    const [width, height] = sheet.size.map((size) => /^(\d+(?:\.\d+)?)mm$/.exec(size)![1]!);
    expect(sheet.viewBox).toBe(`0 0 ${width} ${height}`);
    expect([Number(width), Number(height)]).toEqual([made.widthMillimetres, made.heightMillimetres]);
  });

  it("is at 1:100: the building, each room and the scale bar", () => {
    expect(sheet.building.width).toBeCloseTo(layout.building.width * 10, 2);
    expect(sheet.building.height).toBeCloseTo(layout.building.depth * 10, 2);
    for (const { name, width, depth } of layout.rooms) {
      const box = sheet.rooms.find(({ title }) => title === name)!;
      expect([box.width, box.height]).toEqual([expect.closeTo(width * 10, 2), expect.closeTo(depth * 10, 2)]);
    }
    expect(sheet.bar.reduce((sum, { width }) => sum + width, 0)).toBeCloseTo(100, 6);
    expect(sheet.texts).toContain("10 m");
    expect(sheet.texts.join(" ")).toContain("1:100");
  });

  it("has no two rooms on each other, and floor that adds up to what the table says", () => {
    for (const [index, a] of sheet.rooms.entries())
      for (const b of sheet.rooms.slice(index + 1)) {
        const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
        const along = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
        expect(across > ROUNDED && along > ROUNDED, `${a.title} and ${b.title}`).toBe(false);
      }
    const yards = layout.rooms.filter(({ kind }) => kind === "yard").map(({ name }) => name);
    const floor = sheet.rooms
      .filter(({ title }) => !yards.includes(title))
      .reduce((sum, { width, height }) => sum + (width * height) / 100, 0);
    const walls = layout.areas.find(({ kind }) => kind === "walls")!.squareMetres;
    expect(floor + walls).toBeCloseTo((sheet.building.width * sheet.building.height) / 100, 1);
  });

  it("draws each stage's rail as long as the plan makes it, in one piece", () => {
    for (const { stage, plannedMetres } of layout.stages) {
      const own = sheet.rail.filter(({ title }) => [`${stage}, places`, `${stage}, positions`].includes(title));
      expect(own.reduce((sum, { length }) => sum + length, 0) / 10).toBeCloseTo(plannedMetres, 2);
    }
    for (const [index, { spots }] of sheet.rail.entries()) {
      const before = sheet.rail[index - 1]?.spots.at(-1);
      if (before !== undefined)
        expect(Math.hypot(spots[0]![0] - before[0], spots[0]![1] - before[1])).toBeLessThan(ROUNDED);
    }
    const bleeding = plan.line.find(({ name }) => name === "bleeding");
    if (bleeding !== undefined && "places" in bleeding && !("stations" in bleeding))
      expect(
        sheet.rail.filter(({ title }) => title === "bleeding, places").reduce((sum, { length }) => sum + length, 0),
      ).toBeCloseTo(bleeding.places * 3, 1);
  });

  it("lies on its paper and says what it is not", () => {
    const [width, height] = [made.widthMillimetres, made.heightMillimetres];
    for (const box of [...sheet.rooms, sheet.building, ...sheet.bar]) {
      expect(box.x >= 0 && box.y >= 0 && box.x + box.width <= width && box.y + box.height <= height, box.title).toBe(
        true,
      );
    }
    expect(sheet.texts.join(" ")).toContain("A schematic for talking, not for building");
  });
});

describe("the layout as a picture of a report", () => {
  it("names every room, in it or below it, and every station by letter", async () => {
    const { layout } = FERNCOTE();
    const svg = layoutChart(layout, testContext());
    await expect(picture(svg)).toMatchFileSnapshot("../../pictures/layout.svg");
    const words = textsOf(svg).join(" ");
    for (const [index, { name }] of layout.rooms.entries()) {
      expect(words).toContain(String(index + 1));
      expect(words.replaceAll("- ", "-")).toContain(name);
    }
    expect(words).toContain("skinning");
    expect(words).toContain("not for building");
  });

  it("leaves the yard out where it is narrow", () => {
    const narrow = textsOf(layoutChart(USUAL().layout, testContext({ width: 336 }))).join(" ");
    expect(narrow).not.toContain("live lorries");
    expect(narrow).toContain("evisceration");
  });

  it("is a table of rooms with their floor", () => {
    const { rows, columns } = layoutTable(USUAL().layout);
    expect(columns.map(({ name }) => name)).toEqual([
      "number",
      "room",
      "floor",
      "width",
      "depth",
      "people",
      "worked out from",
    ]);
    expect(rows).toHaveLength(USUAL().layout.rooms.length);
    for (const row of rows) expect(row[2]).toBeCloseTo((row[3] as number) * (row[4] as number), 9);
  });
});
