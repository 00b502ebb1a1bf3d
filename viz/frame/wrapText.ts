import { textWidth } from "./textWidth.ts";

/**
 * Breaks a text into at most `maxLines` lines of at most `maxWidth` pixels, at spaces where there are any; what does not
 * fit ends in an ellipsis. Always returns at least one line.
 */
export function wrapText(text: string, maxWidth: number, size: number, maxLines: number, bold = false): string[] {
  const fits = (candidate: string) => textWidth(candidate, size, bold) <= maxWidth;
  const lines: string[] = [];
  let rest = text.trim().replace(/[\t\n\r ]+/g, " ");
  while (rest !== "" && lines.length < maxLines - 1 && !fits(rest)) {
    const cut = lastFittingBreak(rest, fits);
    lines.push(rest.slice(0, cut).trimEnd());
    rest = rest.slice(cut).trimStart();
  }
  lines.push(fits(rest) ? rest : shortened(rest, fits));
  return lines;
}

/** Index after the last space (or hyphen, or slash) before which the text fits; mid-word when one word is too long. */
function lastFittingBreak(text: string, fits: (candidate: string) => boolean): number {
  let end = 0;
  let atBreak = 0;
  for (const character of text) {
    if (!fits(text.slice(0, end + character.length).trimEnd())) break;
    end += character.length;
    if (character === " " || character === "-" || character === "/") atBreak = end;
  }
  return Math.max(atBreak || end, 1);
}

function shortened(text: string, fits: (candidate: string) => boolean): string {
  const characters = [...text];
  while (characters.length > 0 && !fits(`${characters.join("").trimEnd()}…`)) characters.pop();
  return `${characters.join("").trimEnd()}…`;
}
