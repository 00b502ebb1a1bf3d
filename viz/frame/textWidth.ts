/** Widths in em of DejaVu Sans, rounded up and grouped. */
const GROUPS: readonly [RegExp, number][] = [
  [/[\p{Mark}\u2068\u2069\u200E\u200F\u061C]/u, 0],
  [/[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Emoji_Presentation}]/u, 1.1],
  [/[ijlI.,:;|'’ \u00A0\u202F]/u, 0.34],
  [/[frt()[\]/\\!"“”-]/u, 0.53],
  [/[cskvxyz]/u, 0.6],
  [/[mMWw@%—…←→]/u, 1.01],
  [/[+=<>−–±~]/u, 0.84],
  [/\p{Uppercase_Letter}/u, 0.79],
];
const OTHER = 0.65;

/**
 * Width in pixels that a text takes at most, near enough: no font is measured, so the same picture comes out everywhere.
 * Set to DejaVu Sans, the widest of the usual screen fonts; bold adds 12 %.
 */
export function textWidth(text: string, size: number, bold = false): number {
  let ems = 0;
  for (const character of text) ems += GROUPS.find(([group]) => group.test(character))?.[1] ?? OTHER;
  return ems * size * (bold ? 1.12 : 1);
}
