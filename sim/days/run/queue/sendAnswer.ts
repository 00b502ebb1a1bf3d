import type { Redis } from "ioredis";
import { answersKey, STUDY_SECONDS, studyKey } from "./names.ts";

/** Only while the study is there: an answer that nobody waits for would be left lying. */
const PUSH = `
if redis.call("EXISTS", KEYS[1]) == 0 then return 0 end
redis.call("RPUSH", KEYS[2], ARGV[1])
return redis.call("EXPIRE", KEYS[2], ARGV[2])`;

/** Sends an answer to whoever handed the study out. */
export async function sendAnswer(redis: Redis, study: string, text: string): Promise<void> {
  await redis.eval(PUSH, 2, studyKey(study), answersKey(study), text, STUDY_SECONDS);
}
