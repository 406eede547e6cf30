import type { DisagreementCause, ExclusionReason, RunRefusal, RunWarning } from "./reduced-run";
import type { RunChannel } from "./run-row";

const CAUSES: Readonly<Record<DisagreementCause, string>> = {
  "power-in-hp": "the power looks like horsepower",
  "power-in-ps-or-torque-in-lbft": "the power looks like PS, or the torque like lbf·ft",
  "torque-at-another-speed": "the torque belongs to another speed: check the ratio between hubs and engine",
  "channels-do-not-belong-together": "the two do not move together: check which channels were chosen",
};

/** Why rows were left out, in words for a table. */
export const exclusionWords: Readonly<Record<ExclusionReason, string>> = {
  "not-a-number": "no number",
  "speed-spike": "jump in engine speed",
  "not-driving": "no power at the hubs",
  "outside-sweep": "outside the sweep",
  "outside-band": "outside the chosen speeds",
};

/** One sentence for people that says what to do. */
export function explainRunWarning(warning: RunWarning): string {
  switch (warning.code) {
    case "power-and-torque-disagree":
      return `Power is ${warning.ratio.toFixed(3)} times torque × speed; ${CAUSES[warning.likely]}.`;
    case "gap-in-speed":
      return `Nothing was logged from ${warning.fromRpm.toFixed(0)} to ${warning.toRpm.toFixed(0)} rpm; the curve is left open there.`;
    case "time-goes-back":
      return `Time runs backwards in ${warning.rows} rows: check that the file holds one run in order.`;
    case "speed-stands-still":
      return `Engine speed stands still at ${warning.atRpm.toFixed(0)} rpm for ${warning.seconds.toFixed(1)} s within the sweep: look at the speed pick-up.`;
    case "rises-more-than-once":
      return `Engine speed falls within the run: it also rises from ${warning.fromRpm.toFixed(0)} to ${warning.toRpm.toFixed(0)} rpm, and only the longest rise is used.`;
  }
}

const COLUMNS: Readonly<Record<RunChannel, string>> = {
  boostKPa: "boost, as gauge pressure in kPa, psi or bar",
  lambda: "the mixture, as lambda and not as air to fuel",
  fuelRailMPa: "the rail pressure, in MPa or bar",
  intakeTempC: "the intake temperature, in °C or °F",
};

/** One sentence for people that says what to do. */
export function explainRunRefusal(refusal: RunRefusal): string {
  switch (refusal.code) {
    case "no-rows":
      return "The log has no rows: export the run again.";
    case "no-power-or-torque":
      return "The log has neither power nor torque: choose the column that holds one of them.";
    case "no-usable-rows":
      return "No row shows the engine driving the hubs: check the columns and the chosen speeds.";
    case "sweep-too-short":
      return `The longest sweep runs only from ${refusal.fromRpm.toFixed(0)} to ${refusal.toRpm.toFixed(0)} rpm: a run needs at least 500 rpm without a gap.`;
    case "speed-falls":
      return `Engine speed falls from ${refusal.fromRpm.toFixed(0)} to ${refusal.toRpm.toFixed(0)} rpm: export the sweep in which it rises, in order of time.`;
    case "speed-not-in-rpm":
      return `Engine speed never passes ${refusal.greatest.toFixed(0)}: the column is in another unit; export it in revolutions per minute.`;
    case "channel-in-another-unit":
      return `What reads ${refusal.least.toFixed(1)} to ${refusal.greatest.toFixed(1)} is in another unit than its column says: export ${COLUMNS[refusal.channel]}.`;
  }
}
