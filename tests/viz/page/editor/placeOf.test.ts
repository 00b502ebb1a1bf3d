import { describe, expect, it } from "vitest";
import { insertInText, setInText } from "../../../../viz/page/editor/PlanForm.tsx";
import { placeOf } from "../../../../viz/page/editor/placeOf.ts";

const TEXT = `{
  "name": "x",
  "line": [
    { "name": "skinning", "buffer": "four" }
  ]
}
`;
const at = (path: string, text = TEXT) => {
  const { from, to } = placeOf(text, { path });
  return text.slice(from, to);
};

describe("the place of a fault in the text", () => {
  it("is the value, the key of something long, or what stands around something missing", () => {
    expect(at("name")).toBe('"x"');
    expect(at("line[0].buffer")).toBe('"four"');
    expect(at("line")).toBe('"line"');
    expect(at("line[0].crew")).toBe("{");
    expect(at("line[7].crew")).toBe('"line"');
    expect(at("")).toBe("{");
  });

  it("is the line and column of text that is no JSON", () => {
    expect(placeOf("{\r\n  ü]\n", { path: "line 2, column 4" })).toEqual({ from: 6, to: 7 });
    expect(placeOf("{", { path: "line 9, column 9" })).toEqual({ from: 0, to: 1 });
    expect(placeOf("", { path: "line 1, column 1" })).toEqual({ from: 0, to: 0 });
  });
});

describe("an edit in the text", () => {
  it("changes its own place and leaves every other character", () => {
    const odd = '{ "a":1,\n\n   "b" : [1,2],  "c": "ü" }';
    expect(setInText(odd, ["b", 1], 5)).toBe('{ "a":1,\n\n   "b" : [1,5],  "c": "ü" }');
    expect(JSON.parse(setInText(odd, ["b"], undefined))).toEqual({ a: 1, c: "ü" });
    expect(JSON.parse(setInText(odd, ["d"], { e: [] }))).toEqual({ a: 1, b: [1, 2], c: "ü", d: { e: [] } });
    expect(JSON.parse(insertInText(odd, ["b"], 1, 9))).toEqual({ a: 1, b: [1, 9, 2], c: "ü" });
  });
});
