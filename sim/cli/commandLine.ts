/** The command line that repeats a run, ready to paste into a POSIX shell. */
export function commandLine(words: readonly string[]): string {
  return words.map((word) => (/^[\w./:=@%+-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`)).join(" ");
}
