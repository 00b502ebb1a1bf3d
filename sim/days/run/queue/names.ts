/** Everything this program keeps in Redis begins so. */
export const PREFIX = "gambrel";

/** One queue for all studies: a worker serves whoever has work. */
export const QUEUE = "days";

/** So long after the last sign of life of whoever handed a study out, what belongs to it goes away by itself. */
export const STUDY_SECONDS = 600;

/** A hash: the study under `ABOUT`, the plan of each variant under its index. */
export function studyKey(study: string): string {
  return `${PREFIX}:study:${study}`;
}

/** A list: what workers have found, not yet taken. */
export function answersKey(study: string): string {
  return `${PREFIX}:answers:${study}`;
}

export const ABOUT = "about";
