/**
 * Whether a spreadsheet might take a text for a formula: it begins with = + - @, with one of their full-width or small forms (which
 * a spreadsheet for East Asian text takes for the same), with these behind blanks, or with tab or a line break, which are
 * stripped before they are looked at.
 */
export function looksLikeFormula(text: string): boolean {
  return /^(?:[\t\n\r]|\s*[=+\-@＝＋－＠﹦﹢﹣﹫])/u.test(text);
}
