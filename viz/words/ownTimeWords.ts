/** What a station's shares are taken over: stands wherever such a share is drawn or told. */
export const OWN_TIME_WORDS =
  "Own time: from the first head that comes to the station to the last that leaves it, without its breaks and the hours without its crew.";

/** How a crew's work in hand follows from what its stations did. */
export const WORK_IN_HAND_WORDS =
  "Work in hand, in person-time: working position-time of its stations (by the clock) x people per position, walking included; waiting out a repair with a head in hand; repairs; emptying vessels.";
