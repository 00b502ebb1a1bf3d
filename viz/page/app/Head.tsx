import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import { LESSONS } from "../lessons/lessons.ts";
import { Help } from "./Help.tsx";
import { OpenFile } from "./OpenFile.tsx";
import { openLesson } from "./openPlan.ts";
import { copyLink, saveFigures, savePicture, savePlan, saveStudy, saveVariant } from "./save.ts";
import * as state from "./state.ts";

/** Name, plan, and what can be done with the page as a whole. */
export function Head() {
  return (
    <header class="head">
      <h1 class="brand">
        <Mark /> Gambrel
      </h1>
      <p class="title" title={state.planTitle.value}>
        {state.planTitle.value}
      </p>
      <nav aria-label="Page">
        <Menu id="lessons" name="Lessons">
          {LESSONS.map((lesson) => (
            <Item key={lesson.id} act={() => openLesson(lesson)}>
              {lesson.title}
            </Item>
          ))}
        </Menu>
        <button
          type="button"
          onClick={() => {
            state.editorOpen.value = true;
          }}
        >
          Edit the plan{state.faults.value.length > 0 && <b class="flag"> {state.faults.value.length} to fix</b>}
        </button>
        <OpenFile />
        <Menu id="save" name="Save and share">
          <Item act={copyLink}>Copy a link with plan and changes</Item>
          <Item act={savePlan}>Save the plan</Item>
          {state.isChanged.value && <Item act={saveVariant}>Save the variant as a plan</Item>}
          {state.isChanged.value && <Item act={saveStudy}>Save as a study for the command line</Item>}
          <Item act={saveFigures}>Save the figures (JSON)</Item>
          <Item act={() => savePicture("svg")}>Save the picture (SVG)</Item>
          <Item act={() => savePicture("png")}>Save the picture (PNG)</Item>
        </Menu>
        <Menu id="look" name="Look">
          {(["auto", "light", "dark"] as const).map((name) => (
            <Item
              key={name}
              checked={state.theme.value === name}
              act={() => {
                state.theme.value = name;
              }}
            >
              {name === "auto" ? "Same as the device" : name === "light" ? "Light" : "Dark"}
            </Item>
          ))}
        </Menu>
        <Help />
      </nav>
    </header>
  );
}

/** A gambrel: the frame a carcass hangs from. */
function Mark() {
  return (
    <svg width="30" height="26" viewBox="0 0 30 26" aria-hidden="true" focusable="false">
      <path
        d="M15,1v6M15,7L3,15M15,7L27,15M3,15c0,3 -1,4 -2,6M27,15c0,3 1,4 2,6M8,14.5v9M22,14.5v9"
        fill="none"
        stroke="currentColor"
        stroke-width="2.4"
        stroke-linecap="round"
      />
    </svg>
  );
}

function Menu({ id, name, children }: { id: string; name: string; children: ComponentChildren }) {
  const button = useRef<HTMLButtonElement>(null);
  return (
    <div class="menu">
      <button type="button" ref={button} popovertarget={`menu-${id}`}>
        {name}
      </button>
      <div
        id={`menu-${id}`}
        popover="auto"
        class="sheet"
        onBeforeToggle={({ currentTarget, newState }) => {
          if (newState === "open") placeBelow(currentTarget, button.current!);
        }}
      >
        {children}
      </div>
    </div>
  );
}

/** An open sheet lies above everything and knows no place on the page: it is put below its button, within the screen. */
function placeBelow(sheet: HTMLElement, button: HTMLElement): void {
  const { left, bottom } = button.getBoundingClientRect();
  sheet.style.left = `max(4px, min(${left}px, 100vw - var(--sheet) - 4px))`;
  sheet.style.top = `${bottom + 4}px`;
}

function Item({ act, checked, children }: { act: () => unknown; checked?: boolean; children: ComponentChildren }) {
  return (
    <button
      type="button"
      class="item"
      aria-pressed={checked}
      onClick={(event) => {
        event.currentTarget.closest<HTMLElement>("[popover]")?.hidePopover();
        void act();
      }}
    >
      {children}
    </button>
  );
}
