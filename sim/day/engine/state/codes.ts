import { STATES } from "../dayRecord.ts";

/* Numbers that stand for something in the columns of a day. */

export const NONE = -1;

export const WORKING = STATES.indexOf("working");
export const BLOCKED = STATES.indexOf("blocked");
export const STARVED = STATES.indexOf("starved");
export const NO_CREW = STATES.indexOf("no crew");
export const DOWN = STATES.indexOf("down");
export const ON_BREAK = STATES.indexOf("on break");

/** What a position's slot will announce. */
export const NOTHING = 0;
export const WORK_ENDS = 1;
export const POSITION_BREAKS = 2;
export const POSITION_REPAIRED = 3;

/** Why a chain stands; the order is the order of the columns of `standSeconds`. */
export const MOVES = 0;
export const STANDS_DOWN = 1;
export const STANDS_UNFINISHED = 2;
export const STANDS_UNLOADING = 3;
export const STANDS_PAUSE = 4;
export const STANDS = 5;
