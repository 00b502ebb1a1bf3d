import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { svgText } from "../../viz/frame/index.ts";
import { doubtCharts } from "../../viz/report/doubtReport.ts";
import { serverDocument } from "../../viz/report/serverDocument.ts";
import { studyCharts } from "../../viz/report/studyCharts.ts";
import { openBrowser } from "../support/browser.ts";
import { seenDoubt } from "../support/doubtCase.ts";
import { exampleDay } from "../support/exampleDay.ts";
import { exampleWeek } from "../support/exampleWeek.ts";
import { syntheticCurve, syntheticFactorial, syntheticStudy } from "../support/syntheticStudy.ts";
import { textFaults } from "../support/textFaults.ts";
import { whyStudy } from "../support/whyStudy.ts";

/** What the smallest usual telephone (360) leaves, and what the report's pictures are drawn for on paper. */
const [PHONE, PAPER] = [336, 700];

const STUDIES = {
  "a study of variants": async () => studyCharts(syntheticStudy()),
  "one numeric factor": async () => studyCharts(syntheticCurve()),
  "two numeric factors": async () => studyCharts(syntheticFactorial()),
  "a study that tells why": async () => studyCharts(await whyStudy()),
  "a day of a whole plant": async () => studyCharts(exampleDay("ferncote")),
  "a week": async () => studyCharts(await exampleWeek({}, 1)),
  "what is not known": async () => doubtCharts(seenDoubt({ choice: true })),
};

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
}, 60_000);
afterAll(() => browser.close());

function words(svg: SVGSVGElement): string[] {
  return [...svg.querySelectorAll("text")].flatMap((text) => text.textContent!.split(/[\s,;:()-]+/));
}

/** A number, which an axis with less room may leave out. */
const FIGURE = /^[+\u2212]?\d[\d.]*$/;

/** Words of bands over the clock: shorter ones stand there ("overtime"), or none where two bands lie close together. */
const OF_BANDS = new Set(["after", "last", "shift", "lunch"]);

test.each(Object.entries(STUDIES))(
  "on a telephone the pictures of %s are readable: nothing cut off or overlapping, no word broken or lost",
  async (_, study) => {
    const document = serverDocument();
    const charts = await study();
    const drawn = charts.map(({ draw }, index) =>
      draw({ document, theme: "light", width: PHONE, idPrefix: `p${index}` }),
    );
    const page = await browser.newPage({ viewport: { width: PHONE, height: 800 } });
    await page.setContent(`<body style="margin:0">${drawn.map(svgText).join("")}</body>`);
    expect(await textFaults(page)).toEqual([]);
    await page.close();
    const broken = charts.flatMap(({ name, draw }, index) => {
      const wide = new Set(words(draw({ document, theme: "light", width: PAPER, idPrefix: "w" })));
      const narrow = new Set(words(drawn[index]!));
      const isCut = [...narrow].filter((word) => word.endsWith("\u2026") && !wide.has(word));
      const lost = [...wide].filter(
        (word) =>
          !FIGURE.test(word) &&
          !OF_BANDS.has(word) &&
          /\p{L}{4}/u.test(word) &&
          !word.endsWith("\u2026") &&
          !narrow.has(word),
      );
      return [...isCut, ...lost].map((word) => `${name}: ${word}`);
    });
    expect(broken).toEqual([]);
  },
  60_000,
);
