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

/** What the operator reads off in the cell. Nothing of the air is filled in beforehand. */
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
      <div className="form-row">
        <NumberField
          name="barometerKPa"
          label="Barometer in the cell"
          unit="kPa"
          limits={{ low: 60, high: 110 }}
          help="Station pressure"
          isRequired
        />
        <NumberField
          name="airTempC"
          label="Air at the inlet"
          unit="°C"
          limits={{ low: -20, high: 60 }}
          help="At the intake, not in the room"
          isRequired
        />
        <NumberField
          name="relativeHumidityPct"
          label="Humidity"
          unit="%"
          limits={{ low: 0, high: 100 }}
          isRequired
        />
        <NumberField
          name="gearboxOilTempC"
          label="Gearbox oil"
          unit="°C"
          limits={{ low: 0, high: 160 }}
          help="80 to 95 °C, before and after"
          isRequired
        />
        <NumberField
          name="rampRpmPerS"
          label="Ramp"
          unit="rpm/s"
          limits={{ low: 20, high: 2000 }}
          help="The same before and after"
          defaultValue={proposal.rampRpmPerS === null ? "" : String(proposal.rampRpmPerS)}
          isRequired
        />
      </div>
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
      {proposal.asksForFuel && code.startsWith("UN_R85") && <FuelFields />}
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

/** UN R85 corrects compression ignition by its fuel per litre and cycle over the charge pressure ratio. */
function FuelFields() {
  return (
    <div className="form-row">
      <NumberField
        name="fuelMgPerLPerCycle"
        label="Fuel per litre and cycle"
        unit="mg"
        limits={{ low: 1, high: 300 }}
        help="At peak power, per litre of displacement"
        isRequired
      />
      <NumberField
        name="boostRatio"
        label="Charge over ambient pressure"
        unit="absolute"
        limits={{ low: 0.5, high: 6 }}
        help="1 without boost"
      />
    </div>
  );
}
