"use client";

import type { SheetClash, ShownSheet } from "@buildproof/workshop";
import { Button, ButtonLink } from "@/design/button";
import { listedNames, offerText } from "./build-words";
import { useSheet } from "./use-sheet";

interface ClashNoticeProps {
  readonly clash: SheetClash;
  readonly sheet: ShownSheet;
}

/** Why a choice cannot be completed, and for each item in it what would be possible without it. */
export function ClashNotice({ clash, sheet }: ClashNoticeProps) {
  const { mayWrite } = useSheet();
  const toVehicle = clash.remedies.some(({ place }) => place === "vehicle");
  return (
    <div className="clash">
      <p>
        <strong>{clash.sentence}</strong>
      </p>
      <ul className="grid gap-1" aria-label="Why they clash">
        {clash.reasons.map(({ rule, because, source, safety }) => (
          <li key={rule}>
            {because}{" "}
            <i className="fine">
              {safety ? "A safety point. " : ""}
              {source}.
            </i>
          </li>
        ))}
      </ul>
      {clash.members.length > 0 && (
        <ul className="grid gap-2" aria-label="What would be possible">
          {clash.members.map((member) => (
            <li key={member.code}>
              <WithoutMember member={member} currency={sheet.site.currency} />
            </li>
          ))}
        </ul>
      )}
      {clash.remedies.map(({ sentence }) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {mayWrite && toVehicle && (
        <ButtonLink href={`/vehicles/${sheet.vehicle.id}`}>Open the vehicle</ButtonLink>
      )}
    </div>
  );
}

interface WithoutMemberProps {
  readonly member: SheetClash["members"][number];
  readonly currency: string;
}

function WithoutMember({ member, currency }: WithoutMemberProps) {
  const { mayWrite, change } = useSheet();
  const { name, without, otherwise } = member;
  if (!without) return <span>{otherwise}</span>;
  const added = without.add.length === 0 ? "nothing else is needed" : `adds ${listedNames(without.add)}`;
  if (!mayWrite)
    return (
      <span>
        Without {name}: {added}.
      </span>
    );
  return (
    <Button
      onPress={() =>
        change(`${name} left out`, {
          kind: "items",
          set: without.add.map(({ code }) => ({ code, quantity: 1 })),
          remove: without.remove.map(({ code }) => code),
        })
      }
    >
      <span className="text-start">
        Leave out {name}
        <span className="sentence-note">
          {added} · {offerText(without, currency)}
        </span>
      </span>
    </Button>
  );
}
