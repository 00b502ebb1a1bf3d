import { isolated } from "../../frame/index.ts";
import type { Lesson } from "../lessons/lesson.ts";
import { Slider } from "./Controls.tsx";
import { Icon } from "./Icon.tsx";
import { closeLesson } from "./openPlan.ts";
import { Figure } from "./Results.tsx";
import * as state from "./state.ts";

/** A lesson as the trainer goes through it: question, guesses, what to move, what to look for, answer. */
export function LessonPanel({ lesson }: { lesson: Lesson }) {
  return (
    <section class="lesson" aria-label="Lesson">
      <header>
        <h2>{lesson.title}</h2>
        <button type="button" class="round" aria-label="Leave the lesson" onClick={closeLesson}>
          <Icon name="close" />
        </button>
      </header>
      <p>{lesson.about}</p>
      <Question lesson={lesson} />
      <Steps lesson={lesson} />
      <div>
        <h3>What to look for</h3>
        <ul>
          {lesson.watch.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      </div>
      <Answer lesson={lesson} />
    </section>
  );
}

/** Guesses are entered before the answer is shown: how many hands are up for each. */
function Question({ lesson }: { lesson: Lesson }) {
  const hands = state.hands.value;
  const isShown = state.answerShown.value;
  const most = Math.max(1, ...hands);
  return (
    <fieldset class="question">
      <legend>{lesson.question}</legend>
      <ol>
        {lesson.options.map((option, index) => (
          <li key={option} class={isShown && index === lesson.right ? "right" : ""}>
            <div class="option">
              <span>
                {option}
                {isShown && index === lesson.right && <b class="verdict-word">This is what happens.</b>}
              </span>
              <label>
                <span class="small">hands</span>
                <input
                  type="number"
                  min={0}
                  max={999}
                  value={hands[index]}
                  disabled={isShown}
                  aria-label={`Hands up for: ${option}`}
                  onInput={(event) => count(index, Number(event.currentTarget.value))}
                />
              </label>
            </div>
            <span class="bar" style={{ width: `${(100 * (hands[index] ?? 0)) / most}%` }} aria-hidden="true" />
          </li>
        ))}
      </ol>
    </fieldset>
  );
}

function count(option: number, hands: number): void {
  const sound = Number.isFinite(hands) ? Math.min(999, Math.max(0, Math.round(hands))) : 0;
  state.hands.value = state.hands.value.map((before, index) => (index === option ? sound : before));
}

function Steps({ lesson }: { lesson: Lesson }) {
  const controls = lesson.controls.flatMap((id) => state.controls.value.find((control) => control.id === id) ?? []);
  return (
    <div class="steps">
      <h3>What to change</h3>
      <ol>
        {lesson.steps.map(({ say, moves }) => (
          <li key={say}>
            {say}{" "}
            {Object.keys(moves).length > 0 && (
              <button
                type="button"
                aria-pressed={JSON.stringify(state.moves.value) === JSON.stringify(moves)}
                onClick={() => {
                  state.moves.value = moves;
                }}
              >
                Do it
              </button>
            )}
          </li>
        ))}
      </ol>
      {controls.map((control) => (
        <Slider key={control.id} control={control} named />
      ))}
    </div>
  );
}

function Answer({ lesson }: { lesson: Lesson }) {
  const guessed = state.hands.value.some((hands) => hands > 0);
  if (!state.answerShown.value) {
    return (
      <button
        type="button"
        class="primary"
        onClick={() => {
          // The figures beside the answer are those of what was asked, whatever was moved last.
          state.moves.value = lesson.steps[lesson.askedStep]!.moves;
          state.answerShown.value = true;
        }}
      >
        {guessed ? "Show the answer" : "Show the answer without a guess"}
      </button>
    );
  }
  const results = state.results.value;
  const shown = results?.responses.filter(({ key }) => lesson.evidence.includes(key)) ?? [];
  return (
    <div class="answer" role="status">
      <h3>The answer</h3>
      <p>{lesson.answer}</p>
      <h4>
        {state.changeWords.value === "" ? "Figures of today's plan" : `With ${isolated(state.changeWords.value)}`}
      </h4>
      {results !== null && (
        <ul class={state.stale.value ? "figures stale" : "figures"}>
          {shown.map((info) => (
            <Figure key={isolated(info.key)} results={results} info={info} />
          ))}
        </ul>
      )}
    </div>
  );
}
