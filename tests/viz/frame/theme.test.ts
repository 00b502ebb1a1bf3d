import { lab, rgb } from "d3";
import { expect, test } from "vitest";
import { chartStyleSheet, type Paint, paint, SERIES, themeColours } from "../../../viz/frame/index.ts";

const THEMES = ["light", "dark", "print"] as const;

/** Relative luminance and contrast ratio of WCAG 2.2 (W3C 2023), "contrast ratio". */
function contrast(a: string, b: string): number {
  const luminance = (colour: string) => {
    const { r, g, b: blue } = rgb(colour);
    const [R, G, B] = [r, g, blue].map((c) =>
      c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4,
    );
    return 0.2126 * R! + 0.7152 * G! + 0.0722 * B!;
  };
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high! + 0.05) / (low! + 0.05);
}

test.each(THEMES)(
  "every colour that text is written in has the contrast of WCAG 2.2, 1.4.3 (4.5 to 1), in %s",
  (theme) => {
    const colours = themeColours(theme);
    for (const role of ["ink", "muted", "line", "limit", ...SERIES] as Paint[]) {
      expect(contrast(colours[role], colours.paper), role).toBeGreaterThanOrEqual(4.5);
    }
    for (const ground of ["pause", "base"] as Paint[])
      expect(contrast(colours.muted, colours[ground]), ground).toBeGreaterThanOrEqual(4.5);
  },
);

test.each(THEMES)(
  "the fills of working and of the losses differ in lightness, which no colour blindness takes away, in %s",
  (theme) => {
    const colours = themeColours(theme);
    for (const role of ["blocked", "starved", "noCrew", "down", "onBreak"] as Paint[]) {
      expect(Math.abs(lab(colours[role]).l - lab(colours.working).l), role).toBeGreaterThan(4);
    }
  },
);

test("a fixed theme gives colours, auto gives variables that the style sheet sets for light, dark and print", () => {
  expect(paint("print", "ink")).toBe("#000000");
  expect(paint("auto", "ink")).toBe("var(--gambrel-ink)");
  const sheet = chartStyleSheet();
  expect(sheet.split("--gambrel-ink:").length).toBe(4);
  expect(sheet.indexOf("prefers-color-scheme: dark")).toBeLessThan(sheet.indexOf("@media print"));
});
