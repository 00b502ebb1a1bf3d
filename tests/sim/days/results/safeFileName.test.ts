import { expect, it } from "vitest";
import { safeFileName } from "../../../../sim/days/results/index.ts";

it.each([
  ["Café / 2 líneas", "cafe-2-lineas"],
  ["../../etc/passwd", "etc-passwd"],
  ["..", "unnamed"],
  ["", "unnamed"],
  ["兔", "unnamed"],
  ["C:\\boot", "c-boot"],
  ["CON", "con-"],
  ["a\u0000b\nc", "a-b-c"],
])("turns %j into %j", (name, expected) => {
  expect(safeFileName(name)).toBe(expected);
});

it("keeps a long name short", () => {
  expect(safeFileName("x".repeat(500))).toHaveLength(60);
});
