import { foundWords } from "./foundWords.ts";
import { type Reading, read, refused } from "./reading.ts";

/** Accepts what `readShare` accepts as text, range apart. */
export const SHARE_PATTERN = "^(\\d+\\.?\\d*|\\.\\d+)([eE][+\\-]?\\d+)?\\s*%$";

const ALLOWED = "a share from 0 to 1, or from 0 % to 100 %";
const REMEDY = 'write for example "2.5 %" or 0.025';

/** Reads a share: a bare number from 0 to 1, or a text in percent ("2.5 %"). Gives a number from 0 to 1. */
export function readShare(written: unknown): Reading<number> {
  const share = typeof written === "string" ? fromPercent(written) : written;
  if (typeof share !== "number" || Number.isNaN(share)) {
    return refused(`${foundWords(written)} is not a share`, ALLOWED, REMEDY);
  }
  if (share < 0 || share > 1) return refused(`${foundWords(written)} is out of range`, ALLOWED, REMEDY);
  return read(share);
}

function fromPercent(text: string): number {
  const digits = /^(-?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*%$/u.exec(text);
  return digits === null ? Number.NaN : Number(digits[1]) / 100;
}
