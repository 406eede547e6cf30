import { type DynoLogChannel, type DynoLogColumn, dynoLogColumn, plainColumnName } from "./dyno-log-columns";
import { dynoLogRefusals } from "./dyno-log-refusals";
import type { DynoLogRefusal } from "./dyno-log-row";
import { readDecimal } from "./read-decimal";

export interface HeaderColumn extends DynoLogColumn {
  readonly index: number;
  /** As written in the file, for sentences. */
  readonly heading: string;
  readonly required: boolean;
}

export interface DynoLogHeader {
  readonly columns: readonly HeaderColumn[];
  readonly runIndex: number | null;
  readonly width: number;
}

const required: ReadonlySet<DynoLogChannel> = new Set(["timeS", "engineRpm"]);

/** Which column is which channel; columns that we do not know are passed over. */
export function dynoLogHeader(headings: readonly string[]): DynoLogHeader | DynoLogRefusal {
  if (headings.every((heading) => typeof readDecimal(heading, true) === "number"))
    return dynoLogRefusals.noHeader();
  const names = headings.map(plainColumnName);
  const doubled = names.find((name, index) => isOurs(name) && names.indexOf(name) !== index);
  if (doubled !== undefined) return dynoLogRefusals.doubledColumn(doubled);
  const columns: HeaderColumn[] = [];
  names.forEach((name, index) => {
    const column = dynoLogColumn(name);
    // A log that gives one channel in two units is read by the first of them.
    if (column === null || columns.some(({ channel }) => channel === column.channel)) return;
    columns.push({
      ...column,
      index,
      heading: headings[index]?.trim() ?? name,
      required: required.has(column.channel),
    });
  });
  const missing = missingFrom(columns);
  if (missing.length > 0) return dynoLogRefusals.missingColumns(missing);
  const runIndex = names.indexOf("run");
  return { columns, runIndex: runIndex === -1 ? null : runIndex, width: headings.length };
}

const isOurs = (name: string) => name === "run" || dynoLogColumn(name) !== null;

function missingFrom(columns: readonly HeaderColumn[]): string[] {
  const has = (channel: DynoLogChannel) => columns.some((column) => column.channel === channel);
  return [
    ...(has("timeS") ? [] : ["time_s"]),
    ...(has("engineRpm") ? [] : ["engine_rpm"]),
    ...(has("hubPowerKw") || has("hubTorqueNm") ? [] : ["hub_power_kw (or hub_torque_nm)"]),
  ];
}
