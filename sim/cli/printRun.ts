import type { Browser } from "playwright-core";

/** Pixels of the PNG for each one of the drawing: sharp in a text on paper. */
const SCALE = 2;

/** Each picture as a PNG, twice its size. The page has no script and asks for nothing. */
export async function chartImages(browser: Browser, charts: readonly { svg: string }[]): Promise<Uint8Array[]> {
  const context = await browser.newContext({ deviceScaleFactor: SCALE, javaScriptEnabled: false, offline: true });
  try {
    const page = await context.newPage();
    const images: Uint8Array[] = [];
    for (const { svg } of charts) {
      await page.setContent(`<body style="margin:0">${svg}</body>`);
      images.push(new Uint8Array(await page.locator("svg").screenshot()));
    }
    return images;
  } finally {
    await context.close();
  }
}

/** The report on A4, with everything that is folded away on the screen because it is long. */
export async function reportPrint(browser: Browser, reportHtml: string): Promise<Uint8Array> {
  const context = await browser.newContext({ javaScriptEnabled: false, offline: true });
  try {
    const page = await context.newPage();
    await page.setContent(reportHtml.replace('<details class="inputs">', '<details class="inputs" open>'));
    const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true });
    return new Uint8Array(pdf);
  } finally {
    await context.close();
  }
}
