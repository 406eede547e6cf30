"use client";

import type { AssumptionChanges, UsedAssumption } from "@buildproof/workshop";
import { Disclosure } from "@/design/disclosure";
import { Moment } from "@/design/moment";
import { RuledTable } from "@/design/ruled-table";
import { ChangeAssumption } from "./change-assumption";
import { assumedText } from "./forecast-words";

interface AssumptionListProps {
  readonly assumptions: readonly UsedAssumption[];
  readonly changes: AssumptionChanges;
  readonly timeZone: string;
  /** Where they may be changed: the build as it was read. Left out where they may not. */
  readonly seen?: { readonly buildId: string; readonly revision: number } | undefined;
}

const columns = [
  { id: "what", title: "Assumed" },
  { id: "used", title: "Used", align: "figure" },
  { id: "usual", title: "Usual", align: "figure" },
  { id: "change", title: "" },
] as const;

/** What a forecast assumes: the changed ones in sight, all of them on a click. */
export function AssumptionList({ assumptions, changes, timeZone, seen }: AssumptionListProps) {
  const changed = assumptions.filter(({ isChanged }) => isChanged);
  const groups = [...new Set(assumptions.map(({ group }) => group))];
  return (
    <div className="grid gap-3">
      {changed.length === 0 ? (
        <p>Every figure is the usual one: the trade’s, the model’s, or that of a chosen item.</p>
      ) : (
        <ul className="sentences" aria-label="Assumptions changed on this build">
          {changed.map((each) => {
            const change = changes[each.name];
            return (
              <li key={each.name} className="sentence">
                <div>
                  <strong>
                    {each.label}: {assumedText(each.used, each.unit)}
                  </strong>{" "}
                  where {assumedText(each.usual, each.unit)} is usual
                  {change && (
                    <span className="sentence-note">
                      “{change.reason}” {change.by}, <Moment at={new Date(change.at)} timeZone={timeZone} />
                    </span>
                  )}
                </div>
              </li>
            );
          })}
        </ul>
      )}
      <Disclosure title={`All ${assumptions.length} assumptions`}>
        <div className="grid gap-4">
          {groups.map((group) => (
            <RuledTable
              key={group}
              caption={group}
              columns={columns}
              rows={assumptions
                .filter((each) => each.group === group)
                .map((each) => ({
                  id: each.name,
                  cells: {
                    what: each.label,
                    used: assumedText(each.used, each.unit),
                    usual: each.isChanged ? assumedText(each.usual, each.unit) : "as used",
                    change: seen && (
                      <ChangeAssumption assumption={each} change={changes[each.name]} seen={seen} />
                    ),
                  },
                }))}
            />
          ))}
          <p className="fine">
            Usual figures: common practice of the trade, no published source. A measured baseline on this dyno
            replaces guesses.
          </p>
        </div>
      </Disclosure>
    </div>
  );
}
