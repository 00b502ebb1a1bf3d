/** How the model works, for a reader who will not read the code. */
export const MODEL_LOGIC: readonly string[] = [
  "Discrete-event simulation of one day: the clock jumps from one event to the next (a head is taken up, a head is finished, a stop, a break). Events at the same moment have a fixed order, so a day depends only on the plan, the seed and its number.",
  "A station has places to wait in and one or more positions to work at; first in, first out. A finished head keeps its position until the next stage has a place (blocking after service). When a place becomes free, the stage before it goes on at once.",
  "A machine works by itself. Work by hand needs its people for the whole cycle; a person finishes the head in hand before a break.",
  "In bleeding and chilling many heads stay side by side, each for at least the time the plan gives; first in, first out.",
  "A breakdown stops a position or a whole station. It comes after so much running time or so much time by the clock, as the plan says. Work that it interrupts goes on with the time left.",
  "Every stage has its own random numbers for each purpose and day, so a change at one station leaves the luck of all others as it was (common random numbers).",
];

/** What the model leaves out, whatever the plan. */
export const MODEL_LIMITS: readonly string[] = [
  "Only what the plan states is in the model. People do not tire, learn or help out beyond the stated rules; machines do not wear.",
  "Times are independent from head to head unless the plan says otherwise; real lines have good and bad hours.",
  "Intervals cover chance between simulated days. They do not cover errors in the plan's figures or in the model, which are often larger.",
  "A day in pictures is one of many possible days; another day of the same plan looks different.",
  "An animal is a head with times here. Its condition, fear and pain, and whether stunning works, are not modelled.",
];
