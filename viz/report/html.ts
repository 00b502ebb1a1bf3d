/** Markup that is safe to put into a page as it stands. Made by `html` or, knowingly, by `trusted`. */
export interface Markup {
  readonly markup: string;
}

type Content = Markup | string | number | readonly Content[];

/** Builds markup from a template: every text put in is escaped, markup put in is kept, lists are joined. */
export function html(strings: TemplateStringsArray, ...contents: Content[]): Markup {
  return trusted(strings.reduce((done, piece, index) => done + markupOf(contents[index - 1] ?? "") + piece));
}

/** Declares a text to be markup: for the charts and style sheets that this program wrote itself. */
export function trusted(markup: string): Markup {
  return { markup };
}

function markupOf(content: Content): string {
  if (typeof content === "number") return String(content);
  if (typeof content === "string") return escapeHtml(content);
  return "markup" in content ? content.markup : content.map(markupOf).join("");
}

/** A text in which a percent sign stays on the line of its number. */
export function unbroken(text: string): string {
  return text.replace(/(\d) %/g, "$1\u00A0%");
}

/** A figure with its unit that stays on one line: "2 min 4 s". */
export function unsplit(figure: string): string {
  return figure.replaceAll(" ", "\u00A0");
}

/** The five characters that mean something in HTML, as character references; fit for text and for quoted attributes. */
export function escapeHtml(text: string): string {
  return text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/'/g, "&#39;");
}
