/*
 * The mark for the engine: a next-event loop in plain C for one saturated serial line and nothing else. One machine a
 * station, exponential cycle times of mean 1, `places` heads before each station but the first, blocking after service.
 * Events wait in a binary heap of stations; a finished head that finds a place moves on, and whatever that frees moves
 * too. The integral of each queue is kept, as the least that a simulation is good for.
 *
 *   tandem STATIONS PLACES HEADS  (PLACES 1 or more)
 *
 * prints heads per second of model time, events, CPU seconds and the heads in the queues on average.
 */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { MOST = 1024 };

static int stations, places;
static double now;
static double ends[MOST];
static int heap[MOST], heapSize;
static int working[MOST], blocked[MOST], waiting[MOST];
static double area[MOST], since[MOST];

/* splitmix64 (Steele, Lea and Flood 2014, "Fast splittable pseudorandom number generators"). */
static uint64_t state = 42;

static double exponential(void) {
  uint64_t z = (state += 0x9e3779b97f4a7c15u);
  z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
  z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
  z ^= z >> 31;
  return -log(((double)(z >> 11) + 0.5) * 0x1p-53);
}

static void push(int station) {
  int at = heapSize++;
  while (at > 0) {
    int above = (at - 1) / 2;
    if (ends[heap[above]] <= ends[station]) break;
    heap[at] = heap[above];
    at = above;
  }
  heap[at] = station;
}

static int pop(void) {
  int first = heap[0];
  int moved = heap[--heapSize];
  int at = 0;
  for (;;) {
    int below = 2 * at + 1;
    if (below >= heapSize) break;
    if (below + 1 < heapSize && ends[heap[below + 1]] < ends[heap[below]]) below++;
    if (ends[moved] <= ends[heap[below]]) break;
    heap[at] = heap[below];
    at = below;
  }
  heap[at] = moved;
  return first;
}

static void begin(int station) {
  working[station] = 1;
  ends[station] = now + exponential();
  push(station);
}

static void change(int station, int by) {
  area[station] += waiting[station] * (now - since[station]);
  since[station] = now;
  waiting[station] += by;
}

/* The finished head of `station` goes on if it can; then the station takes the next one, and so on upstream. */
static long leave(int station) {
  long out = 0;
  for (int at = station; at >= 0 && blocked[at]; at--) {
    if (at == stations - 1) out++;
    else if (!working[at + 1] && !blocked[at + 1]) begin(at + 1);
    else if (waiting[at + 1] < places) change(at + 1, 1);
    else break;
    blocked[at] = 0;
    if (at == 0) begin(0);
    else if (waiting[at] > 0) {
      change(at, -1);
      begin(at);
    }
  }
  return out;
}

int main(int count, char **arguments) {
  if (count != 4) return 2;
  stations = atoi(arguments[1]);
  places = atoi(arguments[2]);
  long heads = atol(arguments[3]);
  if (stations < 1 || stations > MOST || places < 1) return 2;
  long out = 0, events = 0;
  begin(0);
  while (out < heads) {
    int station = pop();
    now = ends[station];
    events++;
    working[station] = 0;
    blocked[station] = 1;
    out += leave(station);
  }
  struct timespec used;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &used);
  double seconds = used.tv_sec + 1e-9 * used.tv_nsec;
  double queued = 0;
  for (int station = 0; station < stations; station++) queued += area[station] / now;
  printf("%.9f %ld %.9f %.9f\n", out / now, events, seconds, queued);
  return 0;
}
