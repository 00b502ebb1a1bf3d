/** Overrides, embeddings and isolates that could reorder text beside a name; the harmless marks (LRM, RLM, ALM) stay. */
const BIDI_CONTROLS = /[\u202A-\u202E\u2066-\u2069]/gu;
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that XML forbids
const FORBIDDEN_IN_XML = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|\p{Surrogate}/gu;
const RIGHT_TO_LEFT = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\u200F\u061C]/u;

/**
 * A text from a plan or study made fit to stand in a picture or page: characters that XML forbids become U+FFFD, and
 * direction controls are shown by number (`<U+202E>`) instead of taking effect. Escaping is the serialiser's business.
 */
export function safeText(text: string): string {
  return text
    .replace(FORBIDDEN_IN_XML, "\uFFFD")
    .replace(BIDI_CONTROLS, (control) => `<U+${control.codePointAt(0)!.toString(16).toUpperCase()}>`);
}

/** `safeText` wrapped so that a right-to-left name cannot reorder the figures beside it; other names are left plain. */
export function isolated(text: string): string {
  const safe = safeText(text);
  return RIGHT_TO_LEFT.test(safe) ? `\u2068${safe}\u2069` : safe;
}
