import { Redis } from "ioredis";
import { shownAddress, withoutPassword } from "../index.ts";

/** The queue cannot be used: one sentence for people, without any password. */
class QueueProblem extends Error {
  constructor(message: string) {
    super(message);
    this.name = "QueueProblem";
  }
}

const CONNECT_MS = 10_000;

const LONGEST_RETRY_MS = 5000;

/**
 * A connection to Redis or Valkey; rediss:// speaks TLS. One that cannot be made at first is a `QueueProblem` at once;
 * one that is lost later is tried again for as long as it takes, and `say` is told.
 */
export async function connect(address: string, say: (words: string) => void): Promise<Redis> {
  let connected = false;
  let reason = "";
  const client = new Redis(address, {
    lazyConnect: true,
    connectTimeout: CONNECT_MS,
    // The queue's library waits for commands without an end, and asks for this.
    maxRetriesPerRequest: null,
    retryStrategy: (times) => (connected ? Math.min(times * 200, LONGEST_RETRY_MS) : null),
  });
  client.on("error", (error: Error) => {
    const words = withoutPassword(error.message || String((error as NodeJS.ErrnoException).code), address);
    if (connected && words !== reason) say(`The queue cannot be reached (${words}); trying again.`);
    reason = words;
  });
  try {
    await inTime(client.connect().then(() => client.ping()));
  } catch (error) {
    client.disconnect();
    const words = plainWords(reason || withoutPassword((error as Error).message, address));
    throw new QueueProblem(
      `${shownAddress(address)}: no queue to be had there (${words}); is Redis or Valkey running, and are address, password and certificate right?`,
    );
  }
  connected = true;
  client.on("ready", () => {
    reason = "";
  });
  // Copies of the connection share its way of trying again, and are to end with it.
  client.on("end", () => {
    connected = false;
  });
  return client;
}

/** Something that takes the connection and then says nothing would be waited for without an end. */
async function inTime(answer: Promise<unknown>): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`no answer in ${CONNECT_MS / 1000} s`)), CONNECT_MS);
  });
  try {
    await Promise.race([answer, late]);
  } finally {
    clearTimeout(timer);
  }
}

/** RESP is what Redis and Valkey speak; the client's own words ask to report what is no fault of its. */
function plainWords(words: string): string {
  return /RESP/.test(words) ? "what answers there speaks another language" : words;
}
