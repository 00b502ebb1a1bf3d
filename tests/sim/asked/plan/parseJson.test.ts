import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/fault.ts";
import { parseJson } from "../../../../sim/asked/plan/parseJson.ts";

describe("parseJson", () => {
  it("gives the value, null included, and skips a byte order mark", () => {
    expect(parseJson('\uFEFF{"a": [1, null]}')).toEqual({ value: { a: [1, null] }, fault: null });
    expect(parseJson("null")).toEqual({ value: null, fault: null });
  });

  it.each([
    ['{"a":1,}', "line 1, column 7: a comma before '}'; allowed: commas between items only; delete this comma"],
    [
      '{\n  "a": 1\n  "b": 2\n}',
      "line 3, column 3: found '\"'; allowed: a comma or '}'; is a comma missing before this?",
    ],
    ["{\r\n'a': 1}", "line 2, column 1: found '''; allowed: a key in double quotes; use double quotes"],
    ["{a: 1}", "line 1, column 2: found 'a'; allowed: a key in double quotes; put the key in double quotes"],
    ['{"a" 1}', "line 1, column 6: found '1'; allowed: a colon after the key; put a colon between key and value"],
    [
      '{"a": 1, "a": 2}',
      "line 1, column 10: the key 'a' appears twice in one object; allowed: each key once; delete one of the two",
    ],
    ["", "line 1, column 1: the text ends here; allowed: a value; is a closing bracket missing?"],
    [
      "{} x",
      "line 1, column 4: found 'x'; allowed: the end of the file; delete what follows, or check the brackets before it",
    ],
    [
      "// plan\n{}",
      "line 1, column 1: found '/'; allowed: a value; JSON has no comments: delete it, or say it in \"notes\"",
    ],
    [
      '["🐇", .5]',
      "line 1, column 7: found '.'; allowed: a value; put texts and quantities in double quotes; write numbers with a decimal point and a leading digit",
    ],
  ])("tells of %j by line and column", (text, message) => {
    const { value, fault } = parseJson(text);
    expect(value).toBeNull();
    expect(formatFault(fault as NonNullable<typeof fault>)).toBe(message);
  });

  it("keeps a key such as __proto__ as plain data", () => {
    const { value } = parseJson('{"__proto__": {"polluted": true}}');
    expect(Object.keys(value as object)).toEqual(["__proto__"]);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});
