import { json } from "@codemirror/lang-json";
import { HighlightStyle, syntaxHighlighting } from "@codemirror/language";
import { type Diagnostic, lintGutter, setDiagnostics } from "@codemirror/lint";
import { EditorState } from "@codemirror/state";
import { tags } from "@lezer/highlight";
import { basicSetup, EditorView } from "codemirror";
import { useEffect, useRef } from "preact/hooks";
import type { PlanFault } from "../worker/messages.ts";
import { placeOf, type TextPlace } from "./placeOf.ts";

interface Props {
  text: string;
  faults: readonly PlanFault[];
  /** Where to look: a fault that was chosen; renewed for every choice. */
  look: TextPlace | null;
  /** The text as it is by now: an effect may run when more has been typed since `text` was handed over. */
  latest: () => string;
  change: (text: string) => void;
}

/** The plan's text, with every fault marked at its place. */
export function PlanText({ text, faults, look, latest, change }: Props) {
  const holder = useRef<HTMLDivElement>(null);
  const view = useRef<EditorView | null>(null);
  const changed = useRef(change);
  changed.current = change;
  useEffect(() => {
    view.current = new EditorView({
      parent: holder.current!,
      state: stateOf(text, (written) => changed.current(written)),
    });
    return () => view.current?.destroy();
  }, []);
  useEffect(() => replace(view.current!, latest()), [text]);
  useEffect(() => {
    const editor = view.current!;
    const content = editor.state.doc.toString();
    editor.dispatch(
      setDiagnostics(
        editor.state,
        faults.map((fault) => diagnostic(content, fault)),
      ),
    );
  }, [faults, text]);
  useEffect(() => {
    if (look === null) return;
    const editor = view.current!;
    const to = Math.min(look.to, editor.state.doc.length);
    editor.dispatch({ selection: { anchor: Math.min(look.from, to), head: to }, scrollIntoView: true });
    editor.focus();
  }, [look]);
  return <div class="plan-text" ref={holder} />;
}

function diagnostic(text: string, fault: PlanFault): Diagnostic {
  return { ...placeOf(text, fault), severity: "error", message: fault.words };
}

/** Puts another text in, touching only what differs, so that cursor and history stay. */
function replace(editor: EditorView, text: string): void {
  const before = editor.state.doc.toString();
  if (before === text) return;
  let from = 0;
  while (from < before.length && from < text.length && before[from] === text[from]) from++;
  let end = 0;
  const room = Math.min(before.length, text.length) - from;
  while (end < room && before[before.length - 1 - end] === text[text.length - 1 - end]) end++;
  editor.dispatch({ changes: { from, to: before.length - end, insert: text.slice(from, text.length - end) } });
}

function stateOf(text: string, change: (text: string) => void): EditorState {
  return EditorState.create({
    doc: text,
    extensions: [
      basicSetup,
      json(),
      lintGutter(),
      syntaxHighlighting(COLOURS),
      LOOK,
      EditorView.lineWrapping,
      EditorView.contentAttributes.of({ "aria-label": "Text of the plan", tabindex: "0" }),
      EditorView.updateListener.of((update) => {
        if (update.docChanged) change(update.state.doc.toString());
      }),
    ],
  });
}

const COLOURS = HighlightStyle.define([
  { tag: tags.propertyName, color: "var(--gambrel-line)" },
  { tag: tags.string, color: "var(--gambrel-series3)" },
  { tag: tags.number, color: "var(--gambrel-series1)" },
  { tag: [tags.bool, tags.null], color: "var(--gambrel-series4)" },
]);

const LOOK = EditorView.theme({
  "&": { height: "100%", backgroundColor: "var(--gambrel-paper)", color: "var(--gambrel-ink)" },
  ".cm-scroller": { fontFamily: 'ui-monospace, "DejaVu Sans Mono", Consolas, monospace', fontSize: "0.85rem" },
  ".cm-gutters": { backgroundColor: "var(--gambrel-pause)", color: "var(--gambrel-muted)", border: "0" },
  ".cm-activeLine, .cm-activeLineGutter": { backgroundColor: "var(--gambrel-pause)" },
  "&.cm-focused .cm-cursor": { borderLeftColor: "var(--gambrel-ink)" },
  ".cm-selectionBackground, &.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground": {
    backgroundColor: "var(--gambrel-range)",
  },
  ".cm-tooltip, .cm-panels": { backgroundColor: "var(--gambrel-paper)", color: "var(--gambrel-ink)" },
  ".cm-matchingBracket": { backgroundColor: "var(--gambrel-range) !important", color: "inherit !important" },
});
