"use client";

import type { OfferedPackage, ShownSheet } from "@buildproof/workshop";
import Link from "next/link";
import { useState } from "react";
import { Button, ButtonLink } from "@/design/button";
import { momentText } from "@/design/moment-text";
import { Select } from "@/design/select";
import { SheetHead } from "@/design/sheet";
import { fuelText, kilometres } from "../customers/vehicle-words";
import { dateText } from "./build-words";
import { EditGoal } from "./edit-goal";
import { PackageChoiceDialog } from "./package-choice-dialog";
import { asksAnything } from "./picked-of-form";
import { QuoteThis } from "./quote-this";
import { TryAnotherWay } from "./try-another-way";
import { useSheet } from "./use-sheet";

/** Another build of the same vehicle. */
export type Sibling = { readonly id: string; readonly number: number };

interface SheetHeadOfBuildProps {
  readonly sheet: ShownSheet;
  readonly quote: { readonly id: string; readonly number: number } | null;
  readonly siblings: readonly Sibling[];
}

/** Vehicle, wish and state of the build, and what can be done with the whole of it. */
export function SheetHeadOfBuild({ sheet, quote, siblings }: SheetHeadOfBuildProps) {
  const { vehicle, customer, site } = sheet;
  const { mayWrite } = useSheet();
  return (
    <>
      <SheetHead
        title={[vehicle.modelName, vehicle.plate].filter((part) => part !== "").join(" · ")}
        lead={
          <>
            Build {sheet.number} for <Link href={`/customers/${customer.id}`}>{customer.name}</Link>:{" "}
            {sheet.goal}
          </>
        }
        actions={
          <>
            <ButtonLink href={`/builds/${sheet.id}/print`}>Print</ButtonLink>
            {mayWrite && <TryAnotherWay buildId={sheet.id} />}
            {mayWrite && <EditGoal sheet={sheet} />}
            {mayWrite && <QuoteThis buildId={sheet.id} quote={quote} />}
          </>
        }
        facts={[
          { label: "Vehicle", value: <Link href={`/vehicles/${vehicle.id}`}>{vehicle.vin}</Link> },
          { label: "Odometer", value: kilometres(vehicle.odometerKm) },
          { label: "Fuel", value: fuelText(vehicle.fuelKind, vehicle.fuelOctane) },
          { label: "Used for", value: vehicle.uses.length > 0 ? vehicle.uses.join(", ") : "not recorded" },
          { label: "Wanted by", value: sheet.wantedBy ? dateText(sheet.wantedBy) : "no day given" },
          { label: "Sheet", value: <SavedWords at={sheet.savedAt} timeZone={site.timeZone} /> },
        ]}
      />
      {siblings.length > 0 && <Siblings id={sheet.id} siblings={siblings} />}
      {mayWrite && <SheetTools sheet={sheet} />}
    </>
  );
}

/** The other builds of this vehicle: each is compared with this one. */
function Siblings({ id, siblings }: { readonly id: string; readonly siblings: readonly Sibling[] }) {
  return (
    <nav aria-label="Compare with another build" className="fine no-print">
      Compare with{" "}
      {siblings.map((sibling, index) => (
        <span key={sibling.id}>
          {index > 0 && ", "}
          <Link href={`/builds/compare?left=${id}&right=${sibling.id}`}>build {sibling.number}</Link>
        </span>
      ))}
    </nav>
  );
}

function SavedWords({ at, timeZone }: { readonly at: Date; readonly timeZone: string }) {
  const { isSaving } = useSheet();
  return (
    <span aria-live="polite">{isSaving ? "saving …" : `saved ${momentText(at, timeZone, "time")}`}</span>
  );
}

function SheetTools({ sheet }: { readonly sheet: ShownSheet }) {
  const { change, undo, redo, undoWords, redoWords } = useSheet();
  const [asking, setAsking] = useState<OfferedPackage | null>(null);
  const take = (chosen: OfferedPackage | null, picked: readonly string[]) =>
    change(chosen ? `Package ${chosen.name} chosen` : "Package left", {
      kind: "package",
      packageCode: chosen?.code ?? null,
      picked,
    });
  return (
    <div className="no-print flex flex-wrap items-end justify-between gap-4">
      <div className="w-full max-w-sm">
        <Select
          label="Package"
          value={sheet.packageCode ?? "none"}
          options={[
            { id: "none", label: "No package" },
            ...sheet.packages.map(({ code, name, outcome }) => ({ id: code, label: name, note: outcome })),
          ]}
          onChange={(code) => {
            const chosen = sheet.packages.find((each) => each.code === code) ?? null;
            if ((chosen?.code ?? null) === sheet.packageCode) return;
            if (chosen && asksAnything(chosen)) setAsking(chosen);
            else take(chosen, []);
          }}
        />
        <PackageChoiceDialog
          offered={asking}
          currency={sheet.site.currency}
          onClose={() => setAsking(null)}
          onTaken={(picked) => {
            setAsking(null);
            take(asking, picked);
          }}
        />
      </div>
      <div className="form-actions">
        <Button isDisabled={undoWords === null} onPress={undo}>
          Undo{undoWords === null ? "" : `: ${undoWords}`}
        </Button>
        <Button isDisabled={redoWords === null} onPress={redo}>
          Redo{redoWords === null ? "" : `: ${redoWords}`}
        </Button>
      </div>
    </div>
  );
}
