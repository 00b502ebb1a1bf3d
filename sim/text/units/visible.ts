/**
 * A text that may quote somebody else's file, as one line that shows what it is: what would act on the place where it is shown, turn
 * the line round or cannot be seen (control characters, direction marks, halves of characters) is a question mark.
 */
export function visible(text: string): string {
  return text.replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u061c\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff]/gu, "?");
}
