import { env } from "node:process";

/** The address of a queue with the password from GAMBREL_QUEUE_PASSWORD, unless the address has one of its own. */
export function queueAddress(written: string, password = env.GAMBREL_QUEUE_PASSWORD): string {
  const url = new URL(written);
  if (password === undefined || password === "" || url.password !== "") return written;
  url.password = password;
  return url.href;
}
