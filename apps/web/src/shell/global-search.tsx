"use client";

import { useRouter } from "next/navigation";
import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import { SearchList } from "./search-list";
import { linesOf, stepThrough } from "./search-results";
import { useSearch } from "./use-search";

/** One field that finds everything: `/` or Ctrl-K from anywhere, arrows, Enter opens, Escape leaves. */
export function GlobalSearch() {
  const router = useRouter();
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [question, setQuestion] = useState("");
  const [isOpen, setIsOpen] = useState(false);
  const [at, setAt] = useState<number | null>(null);
  const state = useSearch(question.trim(), isOpen);
  const lines = state.status === "found" ? linesOf(state.results) : [];
  const current = at === null ? undefined : lines[at];

  useShortcut(input);

  function open(href: string) {
    setIsOpen(false);
    setQuestion("");
    setAt(null);
    input.current?.blur();
    router.push(href);
  }

  function step(by: 1 | -1) {
    setIsOpen(true);
    setAt(stepThrough(lines.length, at, by));
  }

  function openChosen() {
    // Only an answer to the words as they stand: a late answer must not open the wrong vehicle.
    const isAnswered = state.status === "found" && state.question === question.trim();
    const chosen = current ?? (question.trim() === "" ? undefined : lines[0]);
    if (isAnswered && chosen) open(chosen.href);
  }

  function leave() {
    if (isOpen) setIsOpen(false);
    else input.current?.blur();
  }

  function onKeyDown(event: KeyboardEvent) {
    if (event.key === "ArrowDown") step(1);
    else if (event.key === "ArrowUp") step(-1);
    else if (event.key === "Enter") openChosen();
    else if (event.key === "Escape") leave();
    else return;
    event.preventDefault();
  }

  return (
    <search
      className="search"
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) setIsOpen(false);
      }}
    >
      <label className="visually-hidden" htmlFor={`${id}-input`}>
        Find a plate, VIN, name, telephone, quote, job or part
      </label>
      <input
        ref={input}
        id={`${id}-input`}
        className="search-input"
        type="text"
        role="combobox"
        aria-expanded={isOpen}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={current ? `${id}-${current.key}` : undefined}
        aria-keyshortcuts="/ Control+K"
        autoComplete="off"
        spellCheck={false}
        placeholder="Find a plate, name, quote, job…"
        value={question}
        onChange={(event) => {
          setQuestion(event.target.value);
          setAt(null);
          setIsOpen(true);
        }}
        onFocus={() => setIsOpen(true)}
        onKeyDown={onKeyDown}
      />
      <span className="search-key" aria-hidden="true">
        /
      </span>
      <SearchList
        id={id}
        isOpen={isOpen}
        state={state}
        question={question.trim()}
        currentKey={current?.key}
        onOpen={open}
      />
    </search>
  );
}

function useShortcut(input: { readonly current: HTMLInputElement | null }) {
  useEffect(() => {
    function onKeyDown(event: globalThis.KeyboardEvent) {
      const isSlash = event.key === "/" && !event.ctrlKey && !event.metaKey && !isTyping(event.target);
      const isFind = event.key.toLowerCase() === "k" && (event.ctrlKey || event.metaKey);
      if (!isSlash && !isFind) return;
      event.preventDefault();
      input.current?.focus();
      input.current?.select();
    }
    document.addEventListener("keydown", onKeyDown);
    return () => document.removeEventListener("keydown", onKeyDown);
  }, [input]);
}

function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    (target.isContentEditable || ["INPUT", "TEXTAREA", "SELECT"].includes(target.tagName))
  );
}
