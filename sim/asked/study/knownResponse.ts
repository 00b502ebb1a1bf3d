/** What a study must know of a response that its file names. */
export interface KnownResponse {
  key: string;
  /** In plain words; a name that is none of the keys is looked up in it. */
  label?: string;
  /** "clock" and "duration" are times; "share" goes from 0 to 1. */
  format: "number" | "clock" | "share" | "duration";
  better: "more" | "less" | null;
}
