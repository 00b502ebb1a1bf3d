import { formatDuration, formatMinutes, formatRate } from "../../../text/units/index.ts";
import { listWords } from "../listWords.ts";
import type { Break } from "../plan.ts";
import type { StopGap } from "./stopFit.ts";

/** Why two stops do not fit together, in words with their figures. */
export function stopGapWords(gap: StopGap): string {
  const { first, second, leadSeconds, between, places, freePlaces, rate, carriesSeconds, downstreamFirst } = gap;
  const lead = `'${first}' pauses ${formatMinutes(leadSeconds)} before '${second}'`;
  const room = between.length === 0 ? "no place between them" : `${listWords(between)} between them`;
  if (between.length === 0) return `${lead}, with ${room}`;
  if (downstreamFirst) {
    const free = Math.max(0, Math.round(freePlaces));
    return `${lead}, and ${room} has room for ${free} heads more than flow through (${places} places): full after ${formatDuration(whole(carriesSeconds))} at ${formatRate(rate)}, so '${second}' stands through that break and then takes its own`;
  }
  return `${lead}, and ${room} is empty after ${formatDuration(whole(carriesSeconds))} at ${formatRate(rate)}, so '${second}' waits for heads and then takes its own break`;
}

/** Who goes when in the first round of breaks: the others are laid alike. */
export function staggerWords(breaks: readonly Break[]): string {
  const starts = new Map<string, number>();
  for (const pause of breaks) {
    for (const crew of pause.crews)
      if (!starts.has(crew)) starts.set(crew, pause.atSeconds + (pause.laterSeconds[crew] ?? 0));
  }
  const first = Math.min(...starts.values());
  const times = [...new Set(starts.values())].toSorted((a, b) => a - b);
  if (times.length <= 1) return "breaks for all at the same time";
  const words = times.map((at) => {
    const names = listWords([...starts].filter(([, start]) => start === at).map(([crew]) => crew));
    return at === first ? `first ${names}` : `${names} ${formatMinutes(at - first)} later`;
  });
  return `breaks with ${words.join(", ")}`;
}

function whole(seconds: number): number {
  return Math.max(0, Math.round(seconds));
}
