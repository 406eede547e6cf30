"use client";

import { useState } from "react";
import { useTypedValue } from "@/design/forms/form-context";
import { Select } from "@/design/select";
import { fuelWords, isFuel, octanesAtThePump } from "./vehicle-words";

interface FuelFieldsProps {
  readonly fuelKind: string;
  readonly fuelOctane: number | null;
}

const fuels = Object.entries(fuelWords).map(([id, label]) => ({ id, label }));

/** The fuel that is really bought, and its octane where it has one. */
export function FuelFields({ fuelKind, fuelOctane }: FuelFieldsProps) {
  const first = useTypedValue("fuelKind", fuelKind) ?? "";
  const [fuel, setFuel] = useState(first);
  const octanes = new Set<number>(isFuel(fuel) ? octanesAtThePump[fuel] : []);
  // What is recorded stays choosable, also when no pump here sells it.
  if (fuelOctane !== null && fuel === fuelKind) octanes.add(fuelOctane);
  return (
    <div className="form-row">
      <Select
        name="fuelKind"
        label="Fuel"
        options={fuels}
        defaultValue={fuelKind}
        onChange={setFuel}
        help="What the owner really buys."
        isRequired
      />
      {octanes.size > 0 && (
        <Select
          key={fuel}
          name="fuelOctane"
          label="Octane"
          options={[...octanes].map((octane) => ({ id: String(octane), label: `${octane} RON` }))}
          {...(fuelOctane !== null && fuel === fuelKind ? { defaultValue: String(fuelOctane) } : {})}
          isRequired
        />
      )}
    </div>
  );
}
