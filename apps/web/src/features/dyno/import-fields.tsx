"use client";

import type { DynoKind, SetUpProposal } from "@buildproof/workshop";
import { useState } from "react";
import { NumberField } from "@/design/number-field";
import type { Option } from "@/design/options";
import { RadioGroup } from "@/design/radio-group";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";

interface ImportFieldsProps {
  readonly proposal: SetUpProposal;
  readonly kinds: readonly DynoKind[];
}

const kindOptions: readonly (Option & { readonly id: DynoKind })[] = [
  { id: "baseline", label: "Baseline", note: "before anything is changed" },
  { id: "step", label: "Step", note: "on the way, while calibrating" },
  { id: "proof", label: "Proof", note: "finished: the runs the verdict is about" },
];

const codes = [
  { id: "SAE_J1349:AUG2004", label: "SAE J1349 (AUG2004)" },
  { id: "UN_R85:R85", label: "UN R85" },
];

const gears = [
  { id: "locked-converter", label: "Nearest 1:1, converter locked" },
  { id: "closed-clutch", label: "Nearest 1:1, clutch closed" },
  { id: "other", label: "Another gear, or converter not locked", note: "does not compare" },
];

const aspirations = [
  { id: "natural", label: "Natural" },
  { id: "mechanical", label: "Belt-driven blower" },
  { id: "turbo", label: "Turbocharger" },
  { id: "turbo-cooled", label: "Turbocharger with charge cooler" },
];

/** What the operator reads off. Nothing of the air is filled in beforehand. */
export function ImportFields({ proposal, kinds }: ImportFieldsProps) {
  const [code, setCode] = useState<string>(proposal.code);
  return (
    <>
      {kinds.length > 1 ? (
        <RadioGroup
          name="kind"
          label="These runs are"
          options={kindOptions.filter(({ id }) => kinds.includes(id))}
          defaultValue={proposal.kind}
          orientation="horizontal"
        />
      ) : (
        <input type="hidden" name="kind" value={kinds[0]} readOnly />
      )}
      <Readings readings={inTheCell} proposal={proposal} />
      <div className="form-row">
        <Select name="code" label="Correct to" options={codes} value={code} onChange={setCode} />
        <Select
          name="aspiration"
          label="Induction, as run"
          options={aspirations}
          defaultValue={proposal.aspiration}
        />
        <Select
          name="gear"
          label="Gear"
          options={gears}
          {...(proposal.gear ? { defaultValue: proposal.gear } : {})}
          isRequired
        />
      </div>
      <Readings readings={ofTheDrive} proposal={proposal} />
      {proposal.asksForFuel && code.startsWith("UN_R85") && (
        <Readings readings={ofTheFuel} proposal={proposal} />
      )}
      <TextField
        name="note"
        label="Note"
        lines={2}
        help="Fuel in the tank, calibration revision, what was changed"
        maxLength={1000}
      />
    </>
  );
}

type ReadingField = {
  readonly name: keyof SetUpProposal["limits"];
  readonly label: string;
  readonly unit: string;
  readonly help?: string;
  readonly isOptional?: boolean;
};

const inTheCell: readonly ReadingField[] = [
  { name: "barometerKPa", label: "Barometer in the cell", unit: "kPa", help: "Station pressure" },
  { name: "airTempC", label: "Air at the inlet", unit: "°C", help: "At the intake, not in the room" },
  { name: "relativeHumidityPct", label: "Humidity", unit: "%" },
];

const ofTheDrive: readonly ReadingField[] = [
  { name: "gearRatio", label: "Gear ratio", unit: "to 1", help: "Of the gear that was held" },
  { name: "finalDrive", label: "Final drive", unit: "to 1", help: "Engine and hubs are held to the two" },
  { name: "gearboxOilTempC", label: "Gearbox oil", unit: "°C", help: "80 to 95 °C, before and after" },
  { name: "rampRpmPerS", label: "Ramp", unit: "rpm/s", help: "The same before and after" },
];

/** UN R85 corrects compression ignition by its fuel per litre and cycle over the charge pressure ratio. */
const ofTheFuel: readonly ReadingField[] = [
  {
    name: "fuelMgPerLPerCycle",
    label: "Fuel per litre and cycle",
    unit: "mg",
    help: "At peak power, per litre of displacement",
  },
  {
    name: "boostRatio",
    label: "Charge over ambient pressure",
    unit: "absolute",
    help: "1 without boost",
    isOptional: true,
  },
];

interface ReadingsProps {
  readonly readings: readonly ReadingField[];
  readonly proposal: SetUpProposal;
}

function Readings({ readings, proposal }: ReadingsProps) {
  const { gearRatio, finalDrive, rampRpmPerS } = proposal;
  const known: Partial<Record<ReadingField["name"], number | null>> = { gearRatio, finalDrive, rampRpmPerS };
  return (
    <div className="form-row">
      {readings.map(({ name, isOptional = false, ...field }) => (
        <NumberField
          key={name}
          name={name}
          {...field}
          limits={proposal.limits[name]}
          defaultValue={String(known[name] ?? "")}
          isRequired={!isOptional}
        />
      ))}
    </div>
  );
}
