"use client";

import { useState } from "react";
import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Money } from "@/design/money";
import { NumberField } from "@/design/number-field";
import { setQuantityAction } from "./actions";
import { daysText, hoursText } from "./build-words";
import { removing } from "./sheet-change";
import type { SheetSystem } from "./sheet-system";
import { useSheet } from "./use-sheet";

type Line = SheetSystem["chosen"][number];

/** Work and duties are chosen or not; only things come in pieces. */
const countable = new Set(["part", "kit", "consumable"]);

interface ChosenLineProps {
  readonly line: Line;
  readonly buildId: string;
  readonly revision: number;
  readonly currency: string;
}

/** An item of the build with its price and hours. */
export function ChosenLine({ line, buildId, revision, currency }: ChosenLineProps) {
  const { mayWrite, change } = useSheet();
  return (
    <li className="flex flex-wrap items-center gap-x-4 gap-y-0 py-0.5">
      <div className="grow basis-60" tabIndex={-1} data-item={line.code}>
        <span className="font-semibold">{line.name}</span>
        <span className="sentence-note">{detailsOf(line)}</span>
      </div>
      <span>
        {line.grossMinor === 0 ? (
          <span className="fine">by hours</span>
        ) : (
          <Money minor={line.grossMinor} currency={currency} />
        )}
      </span>
      <span className="figure min-w-16 text-end">
        {line.labourHours + line.dynoHours === 0 ? "" : hoursText(line.labourHours + line.dynoHours)}
      </span>
      {mayWrite && (
        <span className="flex gap-2 no-print">
          {countable.has(line.kind) && <Quantity line={line} buildId={buildId} revision={revision} />}
          <Button variant="plain" onPress={() => change(`${line.name} removed`, removing([line.code]))}>
            Remove<span className="visually-hidden"> {line.name}</span>
          </Button>
        </span>
      )}
    </li>
  );
}

function detailsOf(line: Line): string {
  return [
    line.quantity > 1 ? `${line.quantity} pieces` : "",
    line.maker === "workshop" ? "" : line.maker,
    line.leadDays === 0 ? "" : `here in ${daysText(line.leadDays)}`,
    line.returnable || line.grossMinor === 0 ? "" : "cannot go back",
    line.fits ? "" : "does not fit this model",
  ]
    .filter((part) => part !== "")
    .join(" · ");
}

interface QuantityProps {
  readonly line: Line;
  readonly buildId: string;
  readonly revision: number;
}

function Quantity(props: QuantityProps) {
  const { line } = props;
  return (
    <Dialog
      title={`Quantity of ${line.name}`}
      trigger={
        <Button variant="plain">
          {line.quantity} ×<span className="visually-hidden"> {line.name}, change the quantity</span>
        </Button>
      }
    >
      {(close) => <QuantityForm {...props} close={close} />}
    </Dialog>
  );
}

function QuantityForm({ line, buildId, revision, close }: QuantityProps & { readonly close: () => void }) {
  const { saved } = useSheet();
  // As it was when the form opened: the line is drawn anew before the form hears that it is saved.
  const [{ code, name, quantity }] = useState(line);
  return (
    <ActionForm
      action={setQuantityAction}
      label="Quantity"
      onSaved={() => {
        saved(`Quantity of ${name} changed`, { kind: "items", set: [{ code, quantity }], remove: [] });
        close();
      }}
    >
      <input type="hidden" name="buildId" value={buildId} />
      <input type="hidden" name="revision" value={revision} />
      <input type="hidden" name="code" value={code} />
      <NumberField
        name="quantity"
        label="Quantity"
        defaultValue={String(quantity)}
        unit="pieces"
        isWhole
        isRequired
      />
      <SubmitButton pendingLabel="Saving">Save</SubmitButton>
    </ActionForm>
  );
}
