/**
 * How files that people write are held against their schema: faults name what was found, and each file is read as it
 * comes, since compiling a schema first takes longer than the one file that is read with it.
 */
export const PARSING = { reportInput: true, jitless: true } as const;
