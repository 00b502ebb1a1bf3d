/** How the model works, for a reader who will not read the code. */
export const MODEL_LOGIC: readonly string[] = [
  "Discrete-event simulation of one day: the clock jumps from one event to the next (a head taken up, a head finished, a stop, a break). Simultaneous events are taken in a fixed order, so a day depends on nothing but plan, seed and replication.",
  "A station is a row of places to wait in, then one or more positions, then the next stage; first in, first out. A finished head keeps its position until the next stage has a place (blocking after service); a freed place wakes the stage before it at the same instant.",
  "A machine works by itself. A manual position needs its crew for the whole cycle; a person finishes the head in hand before a break.",
  "A dwell stage (bleeding, chilling) holds up to so many heads side by side for at least the time the plan gives, first in, first out.",
  "Breakdowns stop a position or a whole station; their clock runs on running time or on calendar time, as the plan says; interrupted work goes on with the time left.",
  "Random times come from one stream of numbers per replication, stage and purpose, so that changing one station leaves the luck of all others as it was (common random numbers).",
];

/** What the model leaves out, whatever the plan. */
export const MODEL_LIMITS: readonly string[] = [
  "Only what the plan states is in the model. People do not tire, learn or help out beyond the stated rules; machines do not wear.",
  "Distributions are taken as independent from head to head unless the plan says otherwise; real lines have good and bad hours.",
  "Intervals cover the luck of the draw between simulated days. They do not cover errors in the plan's figures or in the model itself, which are often larger.",
  "A day in pictures is one draw out of many; another day of the same plan looks different.",
  "An animal is a head with times here. Its condition, fear and pain, and the effectiveness of stunning, are not modelled.",
];
