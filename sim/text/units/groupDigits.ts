const THIN_SPACE = "\u202F";

/** A text with the whole parts of its numbers grouped by threes with a thin no-break space (ISO 80000-1), as in tables. */
export function groupDigits(text: string): string {
  return text.replace(/(?<![\d.])\d{4,}/g, (digits) => digits.replace(/\B(?=(\d{3})+$)/g, THIN_SPACE));
}
