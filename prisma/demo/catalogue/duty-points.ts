/*
 * A pulley of its own moves the duty point of the blower it belongs to. What it asks more than the kit it is chosen
 * with is demand; what it asks less is given back. Differences at 6,000 rpm in the units of the capacities; they agree
 * with the forecasts of the demo. Common practice, no source.
 */
type DutyPoint = Readonly<Record<string, number>>;

const dutyPoints: Readonly<Record<string, DutyPoint>> = {
  "pulley-24-98": {
    "high-pressure-fuel": -9,
    "low-pressure-fuel": -12,
    "injection-window": -0.2,
    "gearbox-torque": -20,
    "charge-temperature": -3,
    "belt-drive": -7,
    "engine-cooling": -4,
  },
  "pulley-24-86": {
    "high-pressure-fuel": 8,
    "low-pressure-fuel": 11,
    "injection-window": 0.2,
    "gearbox-torque": 15,
    "charge-temperature": 3,
    "belt-drive": 9,
    "engine-cooling": 4,
    brakes: 30,
  },
  "pulley-19-84": {
    "high-pressure-fuel": 6,
    "low-pressure-fuel": 9,
    "injection-window": 0.2,
    "gearbox-torque": 20,
    "charge-temperature": 2,
    "belt-drive": 4,
    "engine-cooling": 2,
  },
  "pulley-gt44-96": {
    "low-pressure-fuel": -8,
    "injection-window": -1.8,
    "clutch-torque": -26,
    "charge-temperature": -4,
    "belt-drive": -5,
    "engine-cooling": -3,
  },
};

/** What the pulleys ask of a capacity beyond their blowers. */
export function pulleyDemand(capacity: string): Readonly<Record<string, number>> {
  return amounts(capacity, (difference) => difference);
}

/** What they give back, with the reserve that the blower was charged. */
export function pulleyRelief(capacity: string, reservePct: number): Readonly<Record<string, number>> {
  return amounts(capacity, (difference) => Math.round(-difference * (100 + reservePct)) / 100);
}

function amounts(capacity: string, of: (difference: number) => number): Readonly<Record<string, number>> {
  return Object.fromEntries(
    Object.entries(dutyPoints)
      .map(([pulley, differences]) => [pulley, of(differences[capacity] ?? 0)] as const)
      .filter(([, amount]) => amount > 0),
  );
}
