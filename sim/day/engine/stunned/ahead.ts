/** When heads come to a stage, the next one to be stunned last, and the longest that any of them waits on the way. */
export interface Ahead {
  comes: number[];
  longestWait: number;
}
