"use client";

import { useEffect, useRef } from "react";
import { SheetRow } from "@/design/sheet";
import { ChosenLine } from "./chosen-line";
import { FindingList } from "./finding-list";
import { ItemChooser } from "./item-chooser";
import type { SheetSystem } from "./sheet-system";
import { useSheet } from "./use-sheet";

interface SystemRowProps {
  readonly system: SheetSystem;
  readonly buildId: string;
  readonly revision: number;
  readonly currency: string;
  readonly vehicleId: string;
}

/** One system of the build: what is chosen in it, what is missing or short, and what can be added. */
export function SystemRow({ system, buildId, revision, currency, vehicleId }: SystemRowProps) {
  const { mayWrite } = useSheet();
  const row = useFocusOnNew(system.chosen.map(({ code }) => code));
  const { chosen, findings, choices } = system;
  return (
    <section aria-label={system.name} ref={row.rowRef}>
      <SheetRow label={<h2 className="text-base">{system.name}</h2>}>
        <div className="grid gap-2">
          {chosen.length > 0 && (
            <ul className="grid" aria-label={`Chosen in ${system.name}`}>
              {chosen.map((line) => (
                <ChosenLine
                  key={line.code}
                  line={line}
                  buildId={buildId}
                  revision={revision}
                  currency={currency}
                />
              ))}
            </ul>
          )}
          {chosen.length === 0 && findings.length === 0 && <p className="fine">{nothingWords(system)}</p>}
          <FindingList findings={findings} system={system.name} currency={currency} vehicleId={vehicleId} />
          {mayWrite && choices.length > 0 && (
            <ItemChooser system={system} currency={currency} onChosen={row.expectNew} />
          )}
        </div>
      </SheetRow>
    </section>
  );
}

/** An empty system, and why it stays empty where it must. */
function nothingWords({ hasNothing, choices }: SheetSystem): string {
  if (hasNothing) return "nothing for this vehicle in the catalogue";
  if (choices.every(({ obstacle }) => obstacle !== null))
    return "nothing chosen; each choice is blocked, and the list says by what";
  return "nothing chosen";
}

/** After something is chosen from the list, the focus goes on to its line. */
function useFocusOnNew(codes: readonly string[]) {
  const rowRef = useRef<HTMLElement>(null);
  const expected = useRef<string | null>(null);
  useEffect(() => {
    const code = expected.current;
    if (code === null || !codes.includes(code)) return;
    expected.current = null;
    rowRef.current?.querySelector<HTMLElement>(`[data-item="${CSS.escape(code)}"]`)?.focus();
  }, [codes]);
  return {
    rowRef,
    expectNew: (code: string) => {
      expected.current = code;
    },
  };
}
