import type { CorrectionWarning } from "./correction-question";

/** One sentence for people that says what to do. */
export function explainCorrectionWarning(warning: CorrectionWarning): string {
  switch (warning) {
    case "superseded":
      return "This code is superseded and reads 2 to 4.6 % higher than SAE J1349: do not compare the two.";
    case "temperature-out-of-range":
      return "The intake air is outside the temperatures this code allows: run again in milder air, or show the observed figure.";
    case "dry-pressure-out-of-range":
      return "The dry air pressure is outside what this code allows: check the barometer, or show the observed figure.";
    case "factor-out-of-range":
      return "The factor is outside what this code allows: show the observed figure, with temperature and pressure.";
    case "not-for-compression-ignition":
      return "This code does not serve compression-ignition engines: choose UN R85.";
    case "boost-control-may-overcorrect":
      return "An engine that holds its boost or torque hardly follows the air, so the correction may give too much: compare observed figures first.";
    case "barometer-implausible":
      return "The barometer reading is unusual: enter the station pressure in kPa, not the pressure reduced to sea level.";
    case "supercooled-vapour":
      return "Below freezing the vapour pressure is that of supercooled water; its effect on the factor is small.";
    case "fuel-figures-not-used":
      return "Fuel per cycle and boost ratio count only for compression ignition under UN R85 and were not used.";
  }
}
