/** What the program tells the shell. */
export const DONE = 0;
export const FAILED = 1;
/**
 * Something a person wrote (arguments, a plan, a study, a folder to write to) is not as it must be. Nothing was
 * written.
 */
export const BAD_INPUT = 2;
/** 128 + the number of the signal, as shells have it. */
export const STOPPED = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;
