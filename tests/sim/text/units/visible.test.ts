import { expect, it } from "vitest";
import { visible } from "../../../../sim/text/units/index.ts";

it.each([
  ["a\u001b[2Jb\u0007", "a?[2Jb?"],
  ["line\nfeed\ttab", "line?feed?tab"],
  ["\u202eevil\u2066x\u2069", "?evil?x?"],
  ["zero\u200bwidth\ufeff\u2060", "zero?width??"],
  ["half \ud800", "half ?"],
])("shows %j without what acts on a screen or turns the line", (text, shown) => {
  expect(visible(text)).toBe(shown);
});

it("leaves every letter as it is, of any script, joined ones too", () => {
  for (const text of ["Kühlung 3 °C – ok", "شهد", "兎", "👩\u200d🍳", "a\u202fb"]) expect(visible(text)).toBe(text);
});
