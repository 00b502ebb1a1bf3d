import { describe, expect, it } from "vitest";
import { readTable } from "../../../../sim/text/csv/index.ts";

describe("readTable", () => {
  it("gives headings and rows, spaces taken off, a byte order mark dropped", () => {
    expect(readTable("\uFEFF a , b\n1, 2 \n")).toEqual({
      headings: ["a", "b"],
      rows: [{ line: 2, cells: ["1", "2"] }],
    });
  });

  it("passes over empty rows and counts lines as a text editor does, whatever ends them", () => {
    expect(readTable("a,b\r\n\r\n1,2\r\n,\r\n3,4").rows).toEqual([
      { line: 3, cells: ["1", "2"] },
      { line: 5, cells: ["3", "4"] },
    ]);
    expect(readTable('a,b\n"two\nlines",2\n3,4\n').rows.map(({ line }) => line)).toEqual([2, 4]);
  });

  it("takes semicolons or tabs where the heading line has no comma", () => {
    expect(readTable("a;b\n1,5;2\n").rows[0]!.cells).toEqual(["1,5", "2"]);
    expect(readTable("a\tb\n1\t2\n").headings).toEqual(["a", "b"]);
    expect(readTable("a;x,b\n1,2\n").headings).toEqual(["a;x", "b"]);
  });

  it("gives rows as long as they are, and nothing for nothing", () => {
    expect(readTable("a,b\n1\n1,2,3\n").rows.map(({ cells }) => cells.length)).toEqual([1, 3]);
    expect(readTable("")).toEqual({ headings: [], rows: [] });
    expect(readTable("\n\n")).toEqual({ headings: [], rows: [] });
  });
});
