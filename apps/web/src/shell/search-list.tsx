"use client";

import type { SearchGroup, SearchResults } from "./search-results";
import type { SearchState } from "./use-search";

interface SearchListProps {
  readonly id: string;
  readonly isOpen: boolean;
  readonly state: SearchState;
  readonly question: string;
  readonly currentKey: string | undefined;
  readonly onOpen: (href: string) => void;
}

/** The answers, by kind. The field keeps the focus; it points at the current line. */
export function SearchList(props: SearchListProps) {
  const { id, isOpen, state, question, currentKey, onOpen } = props;
  return (
    <div className="search-sheet" hidden={!isOpen}>
      <div id={`${id}-list`} role="listbox" aria-label="Found" tabIndex={-1}>
        {state.status === "found" && (
          <>
            {state.results.groups.map((group) => (
              <Group key={group.kind} {...{ id, group, currentKey, onOpen }} />
            ))}
            {state.results.offers.length > 0 && <div className="options-rule" role="presentation" />}
            {state.results.offers.map((offer, index) => (
              <Line
                key={offer.href}
                id={`${id}-offer-${index}`}
                isCurrent={currentKey === `offer-${index}`}
                title={offer.title}
                onOpen={() => onOpen(offer.href)}
              />
            ))}
          </>
        )}
      </div>
      <p className="search-word" role="status">
        {wordOf(state, question)}
      </p>
    </div>
  );
}

interface GroupProps {
  readonly id: string;
  readonly group: SearchGroup;
  readonly currentKey: string | undefined;
  readonly onOpen: (href: string) => void;
}

function Group({ id, group, currentKey, onOpen }: GroupProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group inside a listbox has no element of its own.
    <div role="group" aria-labelledby={`${id}-${group.kind}`}>
      <div id={`${id}-${group.kind}`} className="options-head" role="presentation">
        {group.label}
      </div>
      {group.hits.map((hit) => (
        <Line
          key={hit.id}
          id={`${id}-${group.kind}-${hit.id}`}
          isCurrent={currentKey === `${group.kind}-${hit.id}`}
          title={hit.title}
          detail={hit.detail}
          onOpen={() => onOpen(hit.href)}
        />
      ))}
    </div>
  );
}

interface LineProps {
  readonly id: string;
  readonly isCurrent: boolean;
  readonly title: string;
  readonly detail?: string;
  readonly onOpen: () => void;
}

function Line({ id, isCurrent, title, detail, onOpen }: LineProps) {
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are heard by the field, which keeps the focus.
    <div
      id={id}
      role="option"
      aria-selected={isCurrent}
      data-active={isCurrent || undefined}
      tabIndex={-1}
      className="option search-line"
      ref={(line) => {
        if (isCurrent) line?.scrollIntoView({ block: "nearest" });
      }}
      // The press must not take the focus from the field, or the list closes before the click arrives.
      onPointerDown={(event) => event.preventDefault()}
      onClick={onOpen}
    >
      <span>{title}</span>
      {detail && <span className="option-note">{detail}</span>}
    </div>
  );
}

function wordOf(state: SearchState, question: string): string {
  if (state.status === "failed") return state.sentence;
  if (state.status === "waiting") return "Looking…";
  const found = countOf(state.results);
  if (question === "") return found === 0 ? "What you open will be listed here." : "Opened last";
  if (found > 0) return `${found} found`;
  return `Nothing found for “${question}”. Try part of the plate, the name or the number.`;
}

function countOf(results: SearchResults): number {
  return results.groups.reduce((sum, group) => sum + group.hits.length, 0);
}
