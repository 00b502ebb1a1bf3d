import { beforeAll, describe, expect, it } from "vitest";
import { type Doubt, doubtWords } from "../../../sim/questions/doubt/index.ts";
import { doubtChartFiles, renderDoubtReport } from "../../../viz/report/index.ts";
import { seenDoubt } from "../../support/doubtCase.ts";

/** What a reader reads, without pictures. */
function told(doubt: Doubt): string {
  return renderDoubtReport({ doubt, words: doubtWords(doubt) })
    .replace(/<(style|script|svg)[^>]*>.*?<\/\1>/gs, "")
    .replace(/<[^>]+>/g, " ")
    .replace(/&#39;/g, "'")
    .replace(/&quot;/g, '"')
    .replace(/\s+/g, " ");
}

/** Places of these pieces in a text, in which each is to be found. */
function places(text: string, pieces: readonly string[]): number[] {
  for (const piece of pieces) expect(text).toContain(piece);
  return pieces.map((piece) => text.indexOf(piece));
}

const rising = (values: readonly number[]) => [...values].sort((a, b) => a - b);

describe("the report of what is not known", () => {
  let alone: Doubt;
  let choice: Doubt;
  beforeAll(() => {
    alone = seenDoubt();
    choice = seenDoubt({ choice: true });
  });

  it("begins with both parts in one sentence, then which figure to measure, before any table, method or number of worlds", () => {
    const { verdict, next } = doubtWords(alone);
    const at = places(told(alone), [
      ...["What is luck, what is not known", verdict, next[0]!, "60 worlds with 6 days", "Result 95 of 100 days"],
      ...["Figure 2", "What to do next", "gambrel fit TIMES.csv --uncertain", "Cautions", "Appendix", "Method"],
    ]);
    expect(at).toEqual(rising(at));
    expect(verdict).toMatch(
      /of that span is luck of the day, the rest is that we do not know skinning's jams \(a guess\)/,
    );
  });

  it("of a choice says which plan, then both parts of its span, then which figure to measure", () => {
    const { verdict, words, next } = doubtWords(choice);
    const at = places(told(choice), [
      "Which plan to choose",
      verdict,
      words[0]!,
      next[0]!,
      "Plan 95 of 100 days",
      "What to do next",
    ]);
    expect(at).toEqual(rising(at));
    expect(words[0]).toMatch(/^Work ends between .* with “a machine that jams less” on 95 of 100 days; /);
  });

  it("calls a guess a guess wherever it names the figure, and lists where it stands and who says so", () => {
    const text = told(alone);
    expect(text.match(/skinning's jams(?! \(a guess\))/g)).toBeNull();
    expect(text).toMatch(/cutter's cycle time line\.cutting\.cycle 0\.9\d+ to 1\.(09|10)\d* Forty readings/);
    expect(text).toMatch(/skinning's jams \(a guess\) line\.skinning\.breakdowns\.jam\.repair 0\.6\d+ to 1\.3\d+/);
  });

  it("marks the plan that does harm and the best one, and says in how many worlds", () => {
    const page = renderDoubtReport({ doubt: choice, words: doubtWords(choice) });
    expect(page).toMatch(/a machine that jams less<\/bdi> <span class="tag">best/);
    expect(page).toMatch(/a shortcut<\/bdi> <span class="tag" title="it handles 100 fewer heads a day">does harm/);
    const worlds = Math.round(100 * choice.decision!.variants[1]!.chanceBest);
    expect(told(choice)).toMatch(new RegExp(`a machine that jams less best .* ${worlds} of 100 worlds`));
  });

  it("has every picture as a file, under a name of its own", () => {
    const names = doubtChartFiles(choice).map(({ name }) => name);
    expect(names).toEqual(["chances", "spans-1-finish", "spans-2-heads-per-hour", "tornado"]);
    expect(doubtChartFiles(alone).map(({ name }) => name)).toEqual(names.slice(1));
  });
});
