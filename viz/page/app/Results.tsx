import { scaleLinear } from "d3";
import type { ResponseInfo } from "../../../sim/day/observations/index.ts";
import type { StudyResults } from "../../../sim/days/results/index.ts";
import { formatConfidence, visible } from "../../../sim/text/units/index.ts";
import { isolated } from "../../frame/index.ts";
import { differenceEnds, differenceWords, estimateWords, studyFormat } from "../../words/index.ts";
import { AS_IF_KNOWN, AS_WELL_AS_KNOWN, spansTold, unsureWords } from "../plan/knowing.ts";
import * as state from "./state.ts";

/** How many responses stand in the short list, besides the time limits. */
const SHORT = 6;

/** Key of the share of heads outside a time limit. */
const LIMIT = "beyond.";

/** The figures of twenty days with their intervals, and the difference that the change makes. */
export function Results() {
  const results = state.results.value;
  return (
    <section class="results" aria-label="Results">
      <h2>Results</h2>
      {state.unsure.value.figures > 0 && <Knowing />}
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
  if (state.failure.value !== null) return `The simulation failed: ${visible(state.failure.value)}`;
  if (progress === null) return results === null ? "Nothing simulated yet." : about(results);
  const of = `Simulating: ${progress.done} of ${progress.total} days.`;
  if (results === null) return of;
  return state.stale.value
    ? `${of} The figures shown are from before the change.`
    : `${of} Figures of the first ${results.study.replications} days.`;
}

/** Whether uncertain figures are taken as written or drawn anew for each day, and what that does to the days. */
function Knowing() {
  const { inWorlds, results, knownResults, unsure } = state;
  const choice = (drawn: boolean, words: string) => (
    <label>
      <input
        type="radio"
        name="knowing"
        checked={inWorlds.value === drawn}
        onChange={() => {
          inWorlds.value = drawn;
        }}
      />
      {words}
    </label>
  );
  const [known, drawn] = [knownResults.value, results.value];
  return (
    <div class={`knowing ${state.stale.value ? "stale" : ""}`}>
      <fieldset>
        <legend>{unsureWords(unsure.value)}</legend>
        {choice(false, AS_IF_KNOWN)}
        {choice(true, AS_WELL_AS_KNOWN)}
      </fieldset>
      {inWorlds.value && known !== null && drawn !== null && <p class="spans">{spansTold(known, drawn)}</p>}
    </div>
  );
}

function about({ study, variants }: StudyResults): string {
  const at = formatConfidence(study.confidence);
  const compared = variants.length > 1 ? " Both lines were compared on the same days." : "";
  const drawn = state.knownResults.value === null ? "" : " Each day has uncertain figures of its own.";
  return `Means of ${study.replications} simulated days, each with its ${at} interval.${compared}${drawn} Random seed: “${visible(study.seed)}”.`;
}

function Figures({ results }: { results: StudyResults }) {
  const { responses } = results;
  const first = responses.filter(({ key }) => !key.startsWith(LIMIT)).slice(0, SHORT);
  const others = responses.filter((info) => !first.includes(info));
  return (
    <>
      <ul class="figures">
        {first.map((info) => (
          <Figure key={info.key} results={results} info={info} />
        ))}
      </ul>
      <Limits results={results} />
      {others.length > 0 && (
        <details>
          <summary>All {responses.length} results</summary>
          <ul class="figures">
            {others.map((info) => (
              <Figure key={info.key} results={results} info={info} />
            ))}
          </ul>
          <Meanings responses={others} />
        </details>
      )}
    </>
  );
}

/** Every time limit of the plan: kept or broken, and by how many heads; the one broken most comes first. */
function Limits({ results }: { results: StudyResults }) {
  const shareOf = (key: string) => results.variants.map(({ estimates }) => estimates[key]?.mean ?? 0);
  const limits = results.responses
    .filter(({ key }) => key.startsWith(LIMIT))
    .map((info) => ({ info, worst: Math.max(...shareOf(info.key)) }))
    .sort((a, b) => b.worst - a.worst);
  if (limits.length === 0) return null;
  return (
    <div class="limits">
      <h3>Time limits, and the heads that broke them</h3>
      <ul>
        {limits.map(({ info, worst }) => (
          <li key={info.key} class={worst > 0 ? "broken" : ""}>
            <span>{isolated(info.key.slice(LIMIT.length))}</span> <b>{limitWords(results, info)}</b>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** "kept"; "broken by 8.7 %"; both lines where they differ. */
function limitWords(results: StudyResults, info: ResponseInfo): string {
  const format = studyFormat(results, info);
  const words = results.variants.map(({ estimates }) => {
    const estimate = estimates[info.key];
    if (estimate === undefined || estimate.mean === 0) return "kept";
    return `broken by ${estimateWords(estimate, format, results.study.confidence).mean}`;
  });
  return words[1] === undefined || words[1] === words[0] ? words[0]! : `${words[0]}; in the variant ${words[1]}`;
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
  shown: "difference shown",
  "not shown": "no difference shown",
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
