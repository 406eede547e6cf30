import { readDynoLog } from "./read-dyno-log";

/*
 * Run by the test beside it in a process of its own: reads as many rows as it is told, made as it goes, and
 * prints what it read and the most memory it held.
 */
const asked = Number(process.argv[2]);
const encoder = new TextEncoder();

async function* madeRows(): AsyncGenerator<Uint8Array> {
  yield encoder.encode(
    "time_s,engine_rpm,hub_rpm,hub_power_kw,boost_kpa,lambda,fuel_rail_mpa,intake_temp_c\n",
  );
  for (let row = 0; row < asked; ) {
    let text = "";
    for (const end = Math.min(asked, row + 800); row < end; row += 1) {
      text += `${(row / 200).toFixed(3)},${2000 + (row % 4000)},700.25,${(row % 360) + 0.125},63.9,0.802,19.85,58.4\n`;
    }
    yield encoder.encode(text);
  }
}

let peakMb = 0;
let seen = 0;
const result = await readDynoLog(madeRows(), () => {
  seen += 1;
  if (seen % 20_000 === 0) peakMb = Math.max(peakMb, process.memoryUsage.rss() / 1e6);
});
console.log(JSON.stringify({ ok: result.ok, seen, peakMb: Math.round(peakMb) }));
