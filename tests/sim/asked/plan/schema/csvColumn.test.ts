import { describe, expect, it } from "vitest";
import { csvColumn } from "../../../../../sim/asked/plan/schema/csvColumn.ts";
import { mass, time } from "../../../../../sim/text/units/index.ts";

function column(text: string, name = "seconds", unit = "s", family = time) {
  return csvColumn({ csv: "t.csv", column: name, unit }, family, { readText: () => text });
}

describe("csvColumn", () => {
  it("reads one column into SI, in the order of the file", () => {
    expect(column("head,seconds\n1,4.6\n2,4.1\n")).toEqual({ value: [4.6, 4.1], fault: null, about: "csv" });
    expect(column("\uFEFFw\n350\n", "w", "g", mass).value).toEqual([0.35]);
  });

  it("takes semicolons, quoted headings and Windows line ends", () => {
    expect(column('head;"net; seconds"\r\n1;4.6\r\n', "net; seconds").value).toEqual([4.6]);
  });

  it("tells the first bad row as a text editor counts it, and how many more there are", () => {
    const { fault, about } = column("seconds\n4.6\nabc\n\n4.2\n-1\n");
    expect(about).toBe("column");
    expect(fault).toEqual({
      found: 'row 3 holds "abc" (and 1 more row like it)',
      allowed: "numbers of 0 or more with a decimal point",
      remedy: "correct the row or delete it",
    });
  });

  it("tells of a decimal comma and of an empty cell", () => {
    expect(column("a;seconds\n1;4,6\n").fault?.found).toBe('row 2 holds "4,6"');
    expect(column("a,seconds\n1,\n").fault?.found).toBe("row 2 holds an empty text");
  });

  it("refuses a file without rows, and one with more than ten thousand", () => {
    expect(column("seconds\n").fault?.found).toBe("0 rows");
    expect(column(`seconds\n${"1\n".repeat(10_001)}`).fault?.allowed).toBe("1 to 10000 rows below the headings");
  });
});
