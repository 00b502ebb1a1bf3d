/**
 * How files named in a plan or study are read: passed in, so that reading needs no disk. `path` is as the file wrote it,
 * to be taken from that file's folder. Throws an Error with a reason when it cannot be read.
 */
export interface TextFiles {
  readText(path: string): string;
}
