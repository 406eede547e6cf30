/** What the dyno page says of a vehicle. */
export const vehicleSelect = {
  id: true,
  plate: true,
  vin: true,
  odometerKm: true,
  fuelKind: true,
  fuelOctane: true,
  vehicleModel: { select: { name: true, engine: true, figures: true } },
} as const;

type VehicleRow = {
  readonly id: string;
  readonly plate: string;
  readonly vin: string;
  readonly odometerKm: number;
  readonly fuelKind: string;
  readonly fuelOctane: number | null;
  readonly vehicleModel: { readonly name: string; readonly engine: string };
};

export type VehicleFacts = {
  readonly id: string;
  readonly plate: string;
  readonly vin: string;
  readonly odometerKm: number;
  readonly fuel: string;
  readonly model: string;
  readonly engine: string;
};

export function vehicleFacts({ vehicleModel, fuelKind, fuelOctane, ...vehicle }: VehicleRow): VehicleFacts {
  const { id, plate, vin, odometerKm } = vehicle;
  return {
    id,
    plate,
    vin,
    odometerKm,
    fuel: fuelOctane === null ? fuelKind : `${fuelKind} ${fuelOctane}`,
    model: vehicleModel.name,
    engine: vehicleModel.engine,
  };
}
