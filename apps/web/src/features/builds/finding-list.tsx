"use client";

import type { FixOffer, SheetFinding } from "@buildproof/workshop";
import { Button, ButtonLink } from "@/design/button";
import { listedNames, offerText } from "./build-words";
import { useSheet } from "./use-sheet";

interface FindingListProps {
  readonly findings: readonly SheetFinding[];
  readonly system: string;
  readonly currency: string;
  readonly vehicleId: string;
}

/** What is missing, short or contradictory in a system: each with why, and what mends it at what price. */
export function FindingList({ findings, system, currency, vehicleId }: FindingListProps) {
  if (findings.length === 0) return null;
  return (
    <ul className="sentences" aria-label={`Missing or short in ${system}`}>
      {findings.map((finding) => (
        <li key={finding.rule} className="sentence" data-weight={finding.safety ? "blocks" : "ordinary"}>
          <div>
            <strong>{finding.headline}</strong>
            <span className="sentence-note">
              {finding.because} <i>{sourceWords(finding)}</i>
            </span>
            {finding.fixes.map((fix) => (
              <FixWords key={fixKey(fix)} fix={fix} isOnly={finding.fixes.length === 1} />
            ))}
            {finding.remedy && <span className="sentence-note">{finding.remedy.sentence}</span>}
          </div>
          <Fixes finding={finding} currency={currency} vehicleId={vehicleId} />
        </li>
      ))}
    </ul>
  );
}

function sourceWords({ safety, source }: SheetFinding): string {
  const said = `${source.charAt(0).toUpperCase()}${source.slice(1)}.`;
  return safety ? `A safety point. ${said}` : said;
}

interface FixesProps {
  readonly finding: SheetFinding;
  readonly currency: string;
  readonly vehicleId: string;
}

function Fixes({ finding, currency, vehicleId }: FixesProps) {
  const { mayWrite } = useSheet();
  if (!mayWrite) return null;
  return (
    <div className="sentence-action flex-wrap">
      {finding.fixes.map((fix) => (
        <FixButton key={fixKey(fix)} fix={fix} isOnly={finding.fixes.length === 1} currency={currency} />
      ))}
      {finding.fixes.length === 0 && finding.remedy?.place === "vehicle" && (
        <ButtonLink href={`/vehicles/${vehicleId}`}>Open the vehicle</ButtonLink>
      )}
    </div>
  );
}

interface FixButtonProps {
  readonly fix: FixOffer;
  readonly isOnly: boolean;
  readonly currency: string;
}

/** One click adds everything that the fix needs. */
export function FixButton({ fix, isOnly, currency }: FixButtonProps) {
  const { change } = useSheet();
  const isRemoval = fix.add.length === 0;
  const names = listedNames(isRemoval ? fix.remove : fix.add);
  const words = isRemoval ? `${names} removed` : `${names} added`;
  const prefix = isOnly || fix.labels.length === 0 ? "" : `${fix.labels.join(", ")}: `;
  return (
    <Button
      onPress={() =>
        change(words, {
          kind: "items",
          set: fix.add.map(({ code }) => ({ code, quantity: 1 })),
          remove: fix.remove.map(({ code }) => code),
        })
      }
    >
      <span className="text-start">
        {prefix}
        {isRemoval ? `Remove ${names}` : addWords(fix)}
        {!isRemoval && <span className="visually-hidden"> {names}</span>}
        <span className="sentence-note"> {offerText(fix, currency)}</span>
      </span>
    </Button>
  );
}

function addWords(fix: FixOffer): string {
  if (fix.add.length < 2) return "Add";
  return fix.add.length === 2 ? "Add both" : `Add all ${fix.add.length}`;
}

/** What a fix of several parts brings; one alone is named in the headline already. */
function FixWords({ fix, isOnly }: { readonly fix: FixOffer; readonly isOnly: boolean }) {
  if (fix.add.length < 2 && isOnly) return null;
  if (fix.add.length === 0) return null;
  const prefix = isOnly ? "Brings" : `${fix.labels.join(", ")}:`;
  return (
    <span className="sentence-note">
      {prefix} {listedNames(fix.add)}
    </span>
  );
}

function fixKey(fix: FixOffer): string {
  return [...fix.add, ...fix.remove].map(({ code }) => code).join("+");
}
