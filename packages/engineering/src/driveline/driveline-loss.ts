export const powerPlaces = ["hubs", "wheels", "crank"] as const;
/** Where power is measured or told. */
export type PowerPlace = (typeof powerPlaces)[number];

/** What the way from the crank takes: drag that comes with speed, and a share that comes with load. */
export type DrivelineLoss = {
  /** Oil, seals and bearings at 6,000 rpm of the engine, in the gear of the run. */
  readonly dragKwAt6000: number;
  readonly meshEfficiency: number;
  /** Of tyres on rollers; only where the power is told at the wheels. */
  readonly tyreEfficiency: number;
};

/** Power at the crank from power at the hubs or wheels. */
export function crankPower(
  deliveredKw: number,
  speedRpm: number,
  place: PowerPlace,
  loss: DrivelineLoss,
): number {
  if (place === "crank") return deliveredKw;
  return (hubPower(deliveredKw, place, loss) + dragPower(speedRpm, loss)) / loss.meshEfficiency;
}

/**
 * Power at the hubs or wheels from power at the crank; never less than none.
 *
 * @source  Drag plus proportional loss (derivation); SAE 2020-01-1064 measures a drag that grows with speed. The
 *          usual figures are common practice, no source: a fixed percentage instead inflates every gain.
 * @valid   Gear near 1:1, converter locked, gearbox oil at 80 to 95 °C.
 * @vectors shared/reference/driveline.json
 */
export function deliveredPower(
  crankKw: number,
  speedRpm: number,
  place: PowerPlace,
  loss: DrivelineLoss,
): number {
  if (place === "crank") return crankKw;
  const hubs = Math.max(0, crankKw * loss.meshEfficiency - dragPower(speedRpm, loss));
  return place === "wheels" ? hubs * loss.tyreEfficiency : hubs;
}

function hubPower(deliveredKw: number, place: PowerPlace, { tyreEfficiency }: DrivelineLoss): number {
  return place === "wheels" ? deliveredKw / tyreEfficiency : deliveredKw;
}

/** Half of the drag torque is there at any speed, half grows with it. */
function dragPower(speedRpm: number, { dragKwAt6000 }: DrivelineLoss): number {
  const share = speedRpm / 6_000;
  return dragKwAt6000 * share * (0.5 + 0.5 * share);
}
