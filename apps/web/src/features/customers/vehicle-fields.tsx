import { Checkbox } from "@/design/checkbox";
import { NumberField } from "@/design/number-field";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { FuelFields } from "./fuel-fields";
import { useWords } from "./vehicle-words";
import { VinField } from "./vin-field";

export interface TypedVehicle {
  readonly vin: string;
  readonly modelCode: string;
  readonly plate: string;
  readonly odometerKm: number | null;
  readonly fuelKind: string;
  readonly fuelOctane: number | null;
  readonly uses: readonly string[];
  readonly trailerGtmKg: number | null;
  readonly alreadyFitted: string;
}

interface VehicleFieldsProps {
  readonly vehicle: TypedVehicle;
  readonly vehicleId?: string;
  readonly models: readonly { readonly code: string; readonly name: string; readonly engine: string }[];
}

/** What is asked of a vehicle. */
export function VehicleFields({ vehicle, vehicleId, models }: VehicleFieldsProps) {
  return (
    <>
      <VinField
        defaultValue={vehicle.vin}
        {...(vehicleId === undefined ? {} : { ownVehicleId: vehicleId })}
      />
      <Select
        name="modelCode"
        label="Model"
        options={models.map(({ code, name, engine }) => ({ id: code, label: name, note: engine }))}
        {...(vehicle.modelCode === "" ? {} : { defaultValue: vehicle.modelCode })}
        isRequired
      />
      <div className="form-row">
        <TextField name="plate" label="Plate" defaultValue={vehicle.plate} autoComplete="off" isCode />
        <NumberField
          name="odometerKm"
          label="Odometer"
          unit="km"
          defaultValue={vehicle.odometerKm === null ? "" : String(vehicle.odometerKm)}
          isWhole
          isRequired
        />
      </div>
      <FuelFields fuelKind={vehicle.fuelKind} fuelOctane={vehicle.fuelOctane} />
      <fieldset className="field">
        <legend className="field-label">Used for</legend>
        <div className="choice-group" data-orientation="horizontal">
          {Object.entries(useWords).map(([use, label]) => (
            <Checkbox
              key={use}
              name="uses"
              value={use}
              label={label}
              defaultSelected={vehicle.uses.includes(use)}
            />
          ))}
        </div>
      </fieldset>
      <NumberField
        name="trailerGtmKg"
        label="Heaviest trailer"
        unit="kg"
        defaultValue={vehicle.trailerGtmKg === null ? "" : String(vehicle.trailerGtmKg)}
        isWhole
        help="Loaded, on the trailer's own wheels (GTM). Empty where it tows none."
      />
      <TextField
        name="alreadyFitted"
        label="Already fitted"
        lines={3}
        defaultValue={vehicle.alreadyFitted}
        help="By us or by others: a bar, a lift, an exhaust, a chip."
      />
    </>
  );
}
