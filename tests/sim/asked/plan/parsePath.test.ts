import { describe, expect, it } from "vitest";
import { parsePath } from "../../../../sim/asked/plan/parsePath.ts";

describe("parsePath", () => {
  it.each([
    ["name", ["name"]],
    ["line.skinning.buffer", ["line", "skinning", "buffer"]],
    ["line[3].buffer", ["line", 3, "buffer"]],
    ['line["four-leg cutting"].positions', ["line", "four-leg cutting", "positions"]],
    ["line.four-leg cutting.positions", ["line", "four-leg cutting", "positions"]],
    ['line["cut no. 2"]', ["line", "cut no. 2"]],
    ['line["a \\"b\\""]', ["line", 'a "b"']],
    ["a[0][1]", ["a", 0, 1]],
  ])("takes %s apart into %j", (path, steps) => {
    expect(parsePath(path)).toEqual(steps);
  });

  it.each(["", ".a", "a.", "a..b", "a[x]", "a[", "a]", "a.[0]", "a[0]b", 'a[""]', "a[-1]", "a['b']", 'a["\\x"]'])(
    "cannot read %j",
    (path) => {
      expect(parsePath(path)).toBeNull();
    },
  );
});
