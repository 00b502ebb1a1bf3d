/** An address as it may be shown and kept: the same without its password. */
export function shownAddress(address: string): string {
  const url = new URL(address);
  if (url.password === "") return address;
  url.password = "";
  return url.href;
}

/** Words about an address with its password, in whatever form, struck out. */
export function withoutPassword(words: string, address: string): string {
  const { password } = new URL(address);
  if (password === "") return words;
  return [password, decodedPassword(password)].reduce((text, secret) => text.replaceAll(secret, "***"), words);
}

function decodedPassword(password: string): string {
  try {
    return decodeURIComponent(password);
  } catch {
    return password;
  }
}
