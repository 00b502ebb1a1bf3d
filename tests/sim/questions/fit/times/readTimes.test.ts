import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../../sim/asked/plan/index.ts";
import { MAX_TIMES, readTimes } from "../../../../../sim/questions/fit/times/readTimes.ts";
import { readSubject, subjectPath } from "../../../../../sim/questions/fit/times/subject.ts";

const NO_OPTIONS = { unit: null, by: null };
const read = (text: string, options: Partial<Parameters<typeof readTimes>[1]> = {}) =>
  readTimes(text, { ...NO_OPTIONS, ...options });
const faultsOf = (text: string, options = {}) => read(text, options).faults.map(formatFault);

describe("a heading", () => {
  it("names a stage and, after a colon, what the times are of", () => {
    expect(readSubject("skinning")).toEqual({ stage: "skinning", figure: "cycle", breakdown: null });
    expect(readSubject("bleeding: dwell")).toMatchObject({ stage: "bleeding", figure: "dwell" });
    expect(readSubject("skinning: drive belt uptime")).toEqual({
      stage: "skinning",
      figure: "uptime",
      breakdown: "drive belt",
    });
    expect(readSubject("skinning: repair")).toMatchObject({ figure: "repair", breakdown: "stop" });
    expect(readSubject("skinning: left hand")).toBeNull();
  });

  it("leads to the place in a plan", () => {
    expect(subjectPath(readSubject("skinning")!)).toEqual(["line", "skinning", "cycle"]);
    expect(subjectPath(readSubject("skinning: jam repair")!)).toEqual([
      "line",
      "skinning",
      "breakdowns",
      "jam",
      "repair",
    ]);
  });
});

describe("readTimes", () => {
  it("reads a column for each station, in the order of the file, empty cells passed over", () => {
    const { columns, faults } = read("skinning (s),evisceration [min]\n4.2,\n5.1,0.3\n\n,0.25\n");
    expect(faults).toEqual([]);
    expect(columns).toEqual([
      {
        heading: "skinning",
        subject: { stage: "skinning", figure: "cycle", breakdown: null },
        unit: "s",
        times: [
          { value: 4.2, open: false, line: 2 },
          { value: 5.1, open: false, line: 3 },
        ],
      },
      expect.objectContaining({
        unit: "min",
        times: [
          { value: 0.3, open: false, line: 3 },
          { value: 0.25, open: false, line: 5 },
        ],
      }),
    ]);
  });

  it("takes times that are still open, marked in the cell or in a column beside it", () => {
    const marked = read("a: jam uptime (min)\n600+\n>600\n> 12\n310\n").columns![0]!.times;
    expect(marked.map(({ value, open }) => [value, open])).toEqual([
      [600, true],
      [600, true],
      [12, true],
      [310, false],
    ]);
    const beside = read("a: jam uptime (min),a: jam uptime open\n600,yes\n310,\n250,No\n").columns!;
    expect(beside).toHaveLength(1);
    expect(beside[0]!.times.map(({ open }) => open)).toEqual([true, false, false]);
  });

  it("takes the unit from an option where the heading has none", () => {
    expect(read("a\n4\n", { unit: "s" }).columns![0]!.unit).toBe("s");
    expect(read("a (min)\n4\n", { unit: "s" }).columns![0]!.unit).toBe("min");
  });

  it("passes over columns of words", () => {
    const { columns, passedOver } = read("who,a (s)\nfirst,4\nsecond,5\n");
    expect(columns!.map(({ heading }) => heading)).toEqual(["a"]);
    expect(passedOver).toEqual(["who"]);
  });

  it("splits rows by what one column says they are of", () => {
    const { columns } = read("station,time (s),note\na,4,x\nb,7,\na,5,\nb,,\n", { by: "station" });
    expect(columns!.map(({ heading, unit, times }) => [heading, unit, times.map(({ value }) => value)])).toEqual([
      ["a", "s", [4, 5]],
      ["b", "s", [7]],
    ]);
  });

  it("tells every fault at once, each with line, column and remedy", () => {
    const text = "a (s),b (sek),c: left hand (s),d\n4,1,2,7\nx,1,2,8\n4;2,1,2,9\n-3,1:23,3,9\n0+,4.2s,3,9\n";
    const found = faultsOf(text);
    expect(found).toEqual([
      expect.stringMatching(
        /^line 3, column "a \(s\)": "x"; allowed: numbers of 0 or more.*correct the cell or empty it$/,
      ),
      expect.stringMatching(/^line 4, column "a \(s\)": "4;2"/),
      expect.stringMatching(/^line 5, column "a \(s\)": "-3"/),
      expect.stringMatching(/^line 6, column "a \(s\)": "0\+"/),
      expect.stringMatching(/^column "b \(sek\)": 'sek' is no unit of time; allowed: ms, s, min, h, d; /),
      expect.stringMatching(/^line 5, column "b \(sek\)": "1:23".*one number in the unit of the heading$/),
      expect.stringMatching(/^line 6, column "b \(sek\)": "4.2s".*unit stands in the heading only$/),
      expect.stringMatching(/^column "c: left hand \(s\)": the heading does not say what the times are of/),
      expect.stringMatching(/^column "d": the heading has no unit of time.*add --unit s$/),
    ]);
    expect(read(text).columns).toBeNull();
  });

  it("knows a unit by another spelling", () => {
    expect(faultsOf("a (sec)\n4\n")[0]).toMatch(/did you mean 's'\?$/);
  });

  it.each([
    ["", /it is empty/],
    ["a (s)\n", /no rows/],
    ["a (s),a (s)\n1,2\n", /columns 1 and 2 have the same heading/],
    ["a (s),\n1,2\n", /column "2": it has no heading/],
    ["a (s)\n1,5\n", /line 2: 2 cells under 1 headings; is there a comma in a number/],
    ["a (s);b (s)\n1,5;2\n", /line 2, column "a \(s\)": "1,5".*write a decimal point/],
    ["(s)\n1\n", /does not say what the times are of/],
    ["who\nx\n", /no column holds times/],
    ["a (s),b (s)\n1,\n", /column "b \(s\)": 0 times/],
    ["a (s),a open\n1,perhaps\n", /line 2, column "a open": "perhaps"; allowed: yes or no/],
    ["a (s),a open\n1,\n,yes\n", /line 3, column "a open": no time stands beside it/],
    [`a (s)\n${"1\n".repeat(MAX_TIMES + 1)}`, /10001 times; allowed: 1 to 10000 times/],
  ])("refuses %j", (text, words) => {
    expect(faultsOf(text).join("\n")).toMatch(words);
    expect(read(text).columns).toBeNull();
  });

  it.each([
    ["station,time (s)\na,4\n", "statoin", /--by: 'statoin' is no column.*did you mean 'station'/],
    ["station,x\na,4\n", "station", /no column has a unit in its heading/],
    ["station,x (s),y (s)\na,4,5\n", "station", /2 columns have a unit/],
    ["station,time (s)\n,4\n", "station", /line 2: a time without "station"/],
  ])("refuses %j by %s", (text, by, words) => {
    expect(faultsOf(text, { by }).join("\n")).toMatch(words);
  });
});
