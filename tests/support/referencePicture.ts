import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import pixelmatch from "pixelmatch";
import { PNG } from "pngjs";

const ROOT = resolve(import.meta.dirname, "../..");
const STORED = join(ROOT, "tests/pictures/screens");
const SEEN = join(ROOT, "node_modules/.cache/gambrel-pictures");

/** Two pixels are the same when their colours differ by less than this share of the largest difference (CIE-like, YIQ). */
const COLOUR_TOLERANCE = 0.1;
/** Share of pixels that may differ: two letters that changed places are more. */
const PIXEL_TOLERANCE = 0.0001;

/**
 * What is wrong with a screenshot against the stored one, "" for nothing: another size, or too many pixels that differ,
 * edges smoothed in another way not counted. The screenshot and the differences are then left beside each other to be
 * looked at. With GAMBREL_PICTURES=write it is stored as the new reference.
 */
export function pictureFault(name: string, screenshot: Uint8Array): string {
  const path = join(STORED, `${name}.png`);
  if (process.env.GAMBREL_PICTURES === "write") {
    mkdirSync(STORED, { recursive: true });
    writeFileSync(path, screenshot);
    return "";
  }
  if (!existsSync(path)) return `no ${path}; look at the picture, then store it with GAMBREL_PICTURES=write`;
  const [seen, stored] = [PNG.sync.read(Buffer.from(screenshot)), PNG.sync.read(readFileSync(path))];
  const { width, height } = stored;
  if (seen.width !== width || seen.height !== height) {
    return `${name} is ${seen.width} x ${seen.height}, stored ${width} x ${height}; ${leave(name, screenshot)}`;
  }
  const marks = new PNG({ width, height });
  const differing = pixelmatch(stored.data, seen.data, marks.data, width, height, { threshold: COLOUR_TOLERANCE });
  if (differing <= PIXEL_TOLERANCE * width * height) return "";
  return `${name}: ${differing} pixels differ; ${leave(name, screenshot, PNG.sync.write(marks))}`;
}

function leave(name: string, screenshot: Uint8Array, marks?: Uint8Array): string {
  mkdirSync(SEEN, { recursive: true });
  writeFileSync(join(SEEN, `${name}.png`), screenshot);
  if (marks !== undefined) writeFileSync(join(SEEN, `${name}-differences.png`), marks);
  return `see ${SEEN}, and if it is better: GAMBREL_PICTURES=write`;
}
