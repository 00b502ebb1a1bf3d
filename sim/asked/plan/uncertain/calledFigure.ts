/** A figure of a stage that can be timed, or of one of its breakdowns. */
export interface TimedFigure {
  stage: string;
  figure: "cycle" | "travel" | "dwell" | "uptime" | "repair";
  /** For uptime and repair: of which breakdown. */
  breakdown: string | null;
}

const CALLED: Record<TimedFigure["figure"], (stage: string, breakdown: string) => string> = {
  cycle: (stage) => `${stage}'s cycle time`,
  travel: (stage) => `${stage}'s way to the next stage`,
  dwell: (stage) => `time in ${stage}`,
  uptime: (stage, breakdown) => `time between ${stage}'s ${breakdown}s`,
  repair: (stage, breakdown) => `repair of ${stage}'s ${breakdown}s`,
};
/** Of an uncertain figure's name. */
const MAX_LETTERS = 60;

/** What an uncertain figure is called in sentences, whoever writes it into a plan, so that a measured one takes the guess's place. */
export function calledFigure({ stage, figure, breakdown }: TimedFigure): string {
  return [...CALLED[figure](stage, breakdown ?? "stop")].slice(0, MAX_LETTERS).join("").trim();
}
