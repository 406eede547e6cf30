"use client";

import type { BuildAlternative, BuildAlternatives, ShownSheet } from "@buildproof/workshop";
import { Button } from "@/design/button";
import { Money } from "@/design/money";
import { dateText, daysText, hoursText, listedNames } from "./build-words";
import { ClashNotice } from "./clash-notice";
import { useAlternatives } from "./use-alternatives";
import { useSheet } from "./use-sheet";

/** What is open, and the best ways to close it: they arrive after the sheet, and no press waits for them. */
export function AlternativesSection({ sheet }: { readonly sheet: ShownSheet }) {
  const { findings, id, revision } = sheet;
  const answer = useAlternatives(id, revision, findings.length > 0);
  if (findings.length === 0) return <p className="notice">Nothing is missing.</p>;
  const points = findings.length === 1 ? "1 point is open." : `${findings.length} points are open.`;
  return (
    <section className="notice grid gap-3" aria-label="To complete it" aria-busy={answer.state === "asking"}>
      <p aria-live="polite">
        <strong>{points}</strong>{" "}
        {answer.state === "asking" && "Looking for the best ways to complete the build …"}
        {answer.state === "failed" && answer.sentence}
        {answer.state === "told" && summaryOf(answer.told)}
      </p>
      {answer.state === "told" && (
        <>
          {answer.told.clash && <ClashNotice clash={answer.told.clash} sheet={sheet} />}
          <SideBySide told={answer.told} currency={sheet.site.currency} />
        </>
      )}
    </section>
  );
}

function summaryOf({ alternatives, clash, isAnswered }: BuildAlternatives): string {
  if (!isAnswered) return "No way to complete the build was found in time; one may exist.";
  if (alternatives.length === 0)
    return clash
      ? "No added item closes them; the reasons follow."
      : "No added item closes them. Read the reasons.";
  const ways = alternatives.length === 1 ? "One way closes" : `${alternatives.length} ways close`;
  if (clash) return `They cannot all be closed. ${ways} the rest:`;
  return alternatives.length === 1 ? "One way is best in price, time and date:" : `${ways} all of them:`;
}

interface SideBySideProps {
  readonly told: BuildAlternatives;
  readonly currency: string;
}

function SideBySide({ told, currency }: SideBySideProps) {
  const { alternatives, leavesOpen } = told;
  if (alternatives.length === 0) return null;
  const [first] = alternatives;
  const common = (first?.offer.add ?? []).filter(({ code }) =>
    alternatives.every(({ offer }) => offer.add.some((each) => each.code === code)),
  );
  const isAlone = alternatives.length === 1;
  return (
    <>
      <ul className="alternatives" aria-label="Ways to complete the build">
        {alternatives.map((each) => (
          <Way
            key={each.bestFor.join()}
            way={each}
            differs={each.offer.add.filter((item) => !common.includes(item) && !has(common, item.code))}
            isAlone={isAlone}
            currency={currency}
          />
        ))}
      </ul>
      {common.length > 0 && (
        <p className="fine">
          {isAlone ? "Adds" : "All of them add"} {listedNames(common)}.
        </p>
      )}
      {leavesOpen.length > 0 && <p className="fine">Stays open: {leavesOpen.join(" ")}</p>}
    </>
  );
}

function has(items: readonly { readonly code: string }[], wanted: string): boolean {
  return items.some(({ code }) => code === wanted);
}

interface WayProps {
  readonly way: BuildAlternative;
  readonly differs: BuildAlternative["offer"]["add"];
  readonly isAlone: boolean;
  readonly currency: string;
}

function Way({ way, differs, isAlone, currency }: WayProps) {
  const { mayWrite, change } = useSheet();
  const { offer, grossMinor, labourHours, dynoHours, leadDays, partsBy, isProven } = way;
  return (
    <li className="alternative">
      {!isAlone && <h3 className="text-base">{capital(bestWords(way))}</h3>}
      <p>
        <strong>
          <Money minor={grossMinor} currency={currency} />
        </strong>
        , {hoursText(labourHours)}
        {dynoHours > 0 && ` and ${hoursText(dynoHours)} on the dyno`}
      </p>
      <p>parts {leadDays === 0 ? "in stock" : `here ${dateText(partsBy)}, in ${daysText(leadDays)}`}</p>
      {differs.length > 0 && <p className="fine">With {listedNames(differs)}</p>}
      <p className="fine">
        {isProven ? "Proven: none is better." : "Not proven: the best found; a better one may exist."}
      </p>
      {mayWrite && (
        <Button
          onPress={() =>
            change(`${offer.add.length === 1 ? "1 item" : `${offer.add.length} items`} added`, {
              kind: "items",
              set: offer.add.map(({ code }) => ({ code, quantity: 1 })),
              remove: [],
            })
          }
        >
          {isAlone ? "Add everything that is missing" : `Take the ${bestWords(way)}`}
        </Button>
      )}
    </li>
  );
}

const measureWords = { price: "cheapest", hours: "least workshop time", leadDays: "soonest" } as const;

function bestWords({ bestFor }: BuildAlternative): string {
  const words = bestFor.map((measure) => measureWords[measure]);
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
