import { type UnitName, unitConvert } from "@buildproof/units";
import type { DynoLogRow } from "./dyno-log-row";

export type DynoLogChannel = Exclude<keyof DynoLogRow, "run">;

export interface DynoLogColumn {
  readonly channel: DynoLogChannel;
  readonly toOurUnit: (value: number) => number;
}

const asWritten = (value: number) => value;
const from = (unit: UnitName, ours: UnitName) => (value: number) => unitConvert(value, unit, ours);

/** Plain names with the unit as their last word; the file says its unit or it is not read. */
const columns: Readonly<Record<string, DynoLogColumn>> = {
  time_s: { channel: "timeS", toOurUnit: asWritten },
  time_ms: { channel: "timeS", toOurUnit: (value) => value / 1000 },
  engine_rpm: { channel: "engineRpm", toOurUnit: asWritten },
  engine_speed_rpm: { channel: "engineRpm", toOurUnit: asWritten },
  hub_rpm: { channel: "hubRpm", toOurUnit: asWritten },
  hub_speed_rpm: { channel: "hubRpm", toOurUnit: asWritten },
  wheel_rpm: { channel: "hubRpm", toOurUnit: asWritten },
  wheel_speed_rpm: { channel: "hubRpm", toOurUnit: asWritten },
  hub_power_kw: { channel: "hubPowerKw", toOurUnit: asWritten },
  hub_power_hp: { channel: "hubPowerKw", toOurUnit: from("hp", "kW") },
  hub_torque_nm: { channel: "hubTorqueNm", toOurUnit: asWritten },
  hub_torque_lbft: { channel: "hubTorqueNm", toOurUnit: from("lbft", "Nm") },
  boost_kpa: { channel: "boostKPa", toOurUnit: asWritten },
  boost_psi: { channel: "boostKPa", toOurUnit: from("psi", "kPa") },
  boost_bar: { channel: "boostKPa", toOurUnit: from("bar", "kPa") },
  lambda: { channel: "lambda", toOurUnit: asWritten },
  fuel_rail_mpa: { channel: "fuelRailMPa", toOurUnit: asWritten },
  fuel_rail_bar: { channel: "fuelRailMPa", toOurUnit: (value) => value / 10 },
  intake_temp_c: { channel: "intakeTempC", toOurUnit: asWritten },
  intake_temp_f: { channel: "intakeTempC", toOurUnit: from("degF", "degC") },
};

/** "Hub power [kW]", "hub-power kW" and "hub_power_kw" are one name. */
export function plainColumnName(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/n[·⋅.*]m/g, "nm")
    .replace(/°/g, "")
    .replace(/[^\p{L}\p{N}]+/gu, "_")
    .replace(/^_+|_+$/g, "");
}

export function dynoLogColumn(plainName: string): DynoLogColumn | null {
  return Object.hasOwn(columns, plainName) ? (columns[plainName] ?? null) : null;
}
