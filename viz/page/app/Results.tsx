import { scaleLinear } from "d3";
import type { ResponseInfo } from "../../../sim/day/observations/index.ts";
import type { StudyResults } from "../../../sim/days/results/index.ts";
import { formatConfidence } from "../../../sim/text/units/index.ts";
import { isolated } from "../../frame/index.ts";
import { differenceEnds, differenceWords, estimateWords, studyFormat } from "../../words/index.ts";
import * as state from "./state.ts";

/** How many responses stand in the short list. */
const SHORT = 7;

/** The figures of twenty days with their intervals, and the difference that the change makes. */
export function Results() {
  const results = state.results.value;
  return (
    <section class="results" aria-label="What it comes to">
      <h2>What it comes to</h2>
      <div class={state.stale.value ? "stale" : ""}>{results !== null && <Figures results={results} />}</div>
      <p class="small" role="status">
        {statusWords()}
      </p>
    </section>
  );
}

/** What the figures are of, or how far the next ones have come. */
function statusWords(): string {
  const results = state.results.value;
  const progress = state.progress.value;
  if (state.failure.value !== null) return `The simulation failed: ${state.failure.value}`;
  if (progress === null) return results === null ? "Nothing simulated yet." : about(results);
  const of = `Simulating: ${progress.done} of ${progress.total} days.`;
  if (results === null) return of;
  return state.stale.value
    ? `${of} The figures are still those before the change.`
    : `${of} Means of the first ${results.study.replications} days.`;
}

function about({ study, variants }: StudyResults): string {
  const at = formatConfidence(study.confidence);
  const compared = variants.length > 1 ? " Differences are taken day by day on the same random numbers." : "";
  return `Means of ${study.replications} days with ${at} intervals, seed “${study.seed}”.${compared}`;
}

function Figures({ results }: { results: StudyResults }) {
  const { responses } = results;
  return (
    <>
      <ul class="figures">
        {responses.slice(0, SHORT).map((info) => (
          <Figure key={info.key} results={results} info={info} />
        ))}
      </ul>
      {responses.length > SHORT && (
        <details>
          <summary>All {responses.length} figures</summary>
          <ul class="figures">
            {responses.slice(SHORT).map((info) => (
              <Figure key={info.key} results={results} info={info} />
            ))}
          </ul>
          <Meanings responses={responses.slice(SHORT)} />
        </details>
      )}
    </>
  );
}

/** What shares are taken over, each definition once. */
function Meanings({ responses }: { responses: readonly ResponseInfo[] }) {
  const sentences = [...new Set(responses.map(({ meaning }) => meaning))].filter((meaning) => meaning !== undefined);
  return sentences.map((sentence) => (
    <p key={sentence} class="small">
      {isolated(sentence)}
    </p>
  ));
}

/** Where no column says what is shown. */
const VERDICTS: Record<string, string> = {
  shown: "a difference is shown",
  "not shown": "no difference is shown",
};

export function Figure({ results, info }: { results: StudyResults; info: ResponseInfo }) {
  const format = studyFormat(results, info);
  const { confidence } = results.study;
  const [base, variant] = results.variants;
  const before = estimateWords(base!.estimates[info.key], format, confidence);
  const after = variant && estimateWords(variant.estimates[info.key], format, confidence);
  const difference = variant && differenceWords(variant.differences?.[info.key], format, confidence);
  return (
    <li data-response={info.key}>
      <h3 title={info.meaning}>{isolated(info.label)}</h3>
      <div class="pair">
        <p>
          <b>{before.mean}</b> <span class="range">{before.interval}</span>
        </p>
        {after && (
          <p class="after">
            <b>{after.mean}</b> <span class="range">{after.interval}</span>
          </p>
        )}
      </div>
      {difference && (
        <p class="verdict">
          <IntervalMark results={results} info={info} />
          <b>{difference.mean}</b> <span class="range">{difference.interval}</span>{" "}
          {VERDICTS[difference.verdict] ?? difference.verdict}
        </p>
      )}
    </li>
  );
}

const MARK = 72;

/** The interval of the difference about 0, so that "shown" is seen: it leaves the line out. */
function IntervalMark({ results, info }: { results: StudyResults; info: ResponseInfo }) {
  const difference = results.variants[1]?.differences?.[info.key];
  if (difference === undefined) return null;
  const { low, high } = differenceEnds(difference);
  if (low === null || high === null) return null;
  const most = Math.max(Math.abs(low), Math.abs(high)) || 1;
  const x = scaleLinear()
    .domain([-most, most])
    .range([4, MARK - 4]);
  return (
    <svg
      class={`mark ${difference.shown ? "shown" : ""}`}
      width={MARK}
      height={14}
      aria-hidden="true"
      focusable="false"
    >
      <path class="zero" d={`M${x(0)},0v14`} />
      <path class="span" d={`M${x(low)},7H${x(high)}M${x(low)},3.5v7M${x(high)},3.5v7`} />
      <circle cx={x(difference.mean)} cy={7} r={3.6} />
    </svg>
  );
}
