const ROWS_PER_RUN = 100_000;
const LINES_PER_CHUNK = 1_200;
const KILOWATTS_PER_NEWTON_METRE_RPM = (2 * Math.PI) / 60_000;

/** Ten long runs of an invented engine at 2 kHz, in eight columns, as chunks about as large as a file is read in. */
export function* millionRows(): Generator<Uint8Array> {
  const encoder = new TextEncoder();
  let text = "run,time_s,engine_rpm,hub_power_kw,hub_torque_nm,boost_kpa,lambda,fuel_rail_mpa\n";
  for (let row = 0; row < 1_000_000; row += 1) {
    text += line(Math.floor(row / ROWS_PER_RUN) + 1, row % ROWS_PER_RUN);
    if (row % LINES_PER_CHUNK !== 0) continue;
    yield encoder.encode(text);
    text = "";
  }
  yield encoder.encode(text);
}

/** Speed rises from 2,000 to 6,000 rpm; power is torque times speed; the rest wanders a little. */
function line(run: number, at: number): string {
  const rpm = 2_000 + at * 0.04;
  const powerKw = 40 + rpm * 0.05;
  const torqueNm = powerKw / KILOWATTS_PER_NEWTON_METRE_RPM / rpm;
  const channels = [
    (at / 2_000).toFixed(4),
    rpm.toFixed(1),
    powerKw.toFixed(2),
    torqueNm.toFixed(1),
    (60 + (at % 7) * 0.1).toFixed(1),
    (0.8 + (at % 5) * 0.001).toFixed(3),
    (19.8 + (at % 3) * 0.01).toFixed(2),
  ];
  return `${run},${channels.join(",")}\n`;
}
