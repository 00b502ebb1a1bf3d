import type { Redis } from "ioredis";

const LOOK_MS = 250;
const LOST_AFTER_MS = 3000;

/**
 * Waits for work on a connection, but no longer than the connection lives: commands that cannot be sent wait for a
 * server to come back, which is right while a study runs and wrong when everything is to end. `work` may fail later on.
 * Gives whether the work was done.
 */
export async function unlessLost(redis: Redis, work: Promise<unknown>): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined;
  const lost = new Promise<boolean>((resolve) => {
    let silentMs = 0;
    timer = setInterval(() => {
      silentMs = redis.status === "ready" ? 0 : silentMs + LOOK_MS;
      if (silentMs >= LOST_AFTER_MS) resolve(false);
    }, LOOK_MS);
  });
  try {
    return await Promise.race([work.then(() => true), lost]);
  } finally {
    clearInterval(timer);
    work.catch(() => {});
  }
}
