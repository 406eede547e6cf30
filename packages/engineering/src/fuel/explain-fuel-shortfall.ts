import type { FuelShortfall } from "./fuel-headroom";
import type { FuelStageKind } from "./fuel-stage";

/** The field's word for a stage. */
export function fuelStageWords(kind: FuelStageKind): string {
  switch (kind) {
    case "tank-pump":
      return "tank pump";
    case "high-pressure-pump":
      return "high-pressure pump";
    case "port-injectors":
      return "port injectors";
    case "direct-injectors":
      return "direct injectors";
  }
}

/** Where fuel runs out, such as "high-pressure pump from 5,100 rpm: short by 9 %"; speeds to the nearest 50 rpm. */
export function explainFuelShortfall({ kind, fromSpeedRpm, shortBy }: FuelShortfall): string {
  const speed = Math.round(fromSpeedRpm / 50) * 50;
  const pct = 100 * shortBy;
  const short = pct < 1 ? "less than 1" : String(Math.round(pct));
  return `${fuelStageWords(kind)} from ${thousands(speed)} rpm: short by ${short} %`;
}

function thousands(value: number): string {
  return String(value).replace(/\B(?=(\d{3})+$)/g, ",");
}
