/**
 * How files named in a plan or study are read: passed in, so that reading needs no disk. `path` is as the file wrote it,
 * to be taken from that file's folder. Throws an Error with a reason when it cannot be read.
 */
export interface TextFiles {
  readText(path: string): string;
}

/** For plans that name no file: every name is a fault that says what is missing. */
export const NO_FILES: TextFiles = {
  readText() {
    throw new Error("no files were given to read from; pass { readText(path) }");
  },
};
