/** What a response is. `better` says which direction is wanted, null when neither. */
export interface ResponseInfo {
  key: string;
  label: string;
  /** What it is taken over, in a sentence, where the label alone could be misread. */
  meaning?: string;
  unit: string;
  /** "clock": seconds after the day's start, shown as a time of day. */
  format: "number" | "clock" | "share" | "duration";
  better: "more" | "less" | null;
}
