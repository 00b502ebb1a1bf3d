import type { FigureKind } from "../../text/units/index.ts";

/** What a response is. `better` says which direction is wanted, null when neither. */
export interface ResponseInfo extends FigureKind {
  key: string;
  label: string;
  /** What it is taken over, in a sentence, where the label alone could be misread. */
  meaning?: string;
  better: "more" | "less" | null;
}
