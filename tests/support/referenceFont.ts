import { existsSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Where the packaged browser unpacks the font that comes with it. */
const FOLDER = join(tmpdir(), "fonts", "fonts", "Open_Sans");

/**
 * A style sheet that writes everything in the font that comes with the packaged browser, so that pictures look the same
 * on every machine, whatever fonts it has; null where that browser was not unpacked. Say `bypassCSP` when opening the page.
 */
export function referenceFont(): string | null {
  if (!existsSync(FOLDER)) return null;
  const face = (file: string, weight: number) => {
    const data = readFileSync(join(FOLDER, file)).toString("base64");
    return `@font-face{font-family:reference;font-weight:${weight};src:url(data:font/ttf;base64,${data})}`;
  };
  const faces = [face("OpenSans-Regular.ttf", 400), face("OpenSans-Bold.ttf", 700)];
  return `${faces.join("\n")}\n*{font-family:reference!important}`;
}
