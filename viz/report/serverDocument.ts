import { parseHTML } from "linkedom";

/** An empty document to draw into where there is no browser. */
export function serverDocument(): Document {
  return parseHTML("<!doctype html><html><head></head><body></body></html>").document as unknown as Document;
}
