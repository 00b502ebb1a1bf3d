import seedrandom from "seedrandom";
import TinyQueue from "tinyqueue";

interface Completion {
  time: number;
  station: number;
}

/**
 * The saturated serial line as a programmer would write it in an afternoon: a general-purpose priority queue of
 * completions, one seeded generator a station, exponential cycle times of mean 1, `places` heads before each station but
 * the first, blocking after service. Keeps the integral of the queues and nothing else.
 */
export function priorityQueueLine(stations: number, places: number, heads: number) {
  const random = Array.from({ length: stations }, (_, station) => seedrandom.alea(`line ${station}`).double);
  const events = new TinyQueue<Completion>([], (a, b) => a.time - b.time);
  const working = new Array<boolean>(stations).fill(false);
  const blocked = new Array<boolean>(stations).fill(false);
  const waiting = new Array<number>(stations).fill(0);
  let now = 0;
  let since = 0;
  let queued = 0;
  let area = 0;
  let out = 0;
  let count = 0;

  const begin = (station: number) => {
    working[station] = true;
    events.push({ time: now - Math.log(1 - random[station]!()), station });
  };
  const change = (station: number, by: number) => {
    area += queued * (now - since);
    since = now;
    queued += by;
    waiting[station]! += by;
  };
  const leave = (station: number) => {
    for (let at = station; at >= 0 && blocked[at]; at--) {
      if (at === stations - 1) out++;
      else if (!working[at + 1] && !blocked[at + 1]) begin(at + 1);
      else if (waiting[at + 1]! < places) change(at + 1, 1);
      else return;
      blocked[at] = false;
      if (at === 0) begin(0);
      else if (waiting[at]! > 0) {
        change(at, -1);
        begin(at);
      }
    }
  };

  begin(0);
  while (out < heads) {
    const { time, station } = events.pop()!;
    now = time;
    count++;
    working[station] = false;
    blocked[station] = true;
    leave(station);
  }
  return { events: count, headsPerSecond: heads / now, queued: area / now };
}
