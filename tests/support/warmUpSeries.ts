/** Sixty values of one run that climbs from an empty start; invented. */
export const WARM_UP_SERIES: readonly number[] = Object.freeze(
  (
    "0 1 1 2 3 3 4 5 5 6 6 7 6 8 7 8 7 9 8 8 9 8 7 9 10 8 9 10 9 8 7 9 8 10 9 9 8 10 8 9 10 9 8 9 7 8 9 9 10 8 9 10 8 8 9 8 " +
    "7 9 10 9"
  )
    .split(" ")
    .map(Number),
);
