/** What a station's shares are taken over: stands wherever such a share is drawn or told. */
export const OWN_TIME_WORDS =
  "Own time: from a station's first head to its last, without its breaks and the hours without its crew.";

/** How a crew's work in hand follows from what its stations did. */
export const WORK_IN_HAND_WORDS =
  "Work in hand counts person-hours: the time that a crew's stations work, by the clock, times the people at a position, walking included; waits for a repair with a head in hand; repairs; emptying vessels.";
