import { Notice } from "@/design/notice";

/** What can hurt somebody in the cell, said before anything is measured. */
export function DynoCautions() {
  return (
    <Notice title="Before every run">
      <ul>
        <li>
          Hubs seated, restraints front and rear inspected, guards on; nobody in the cell or in line with the
          hubs.
        </li>
        <li>
          Exhaust extraction on, carbon monoxide alarm tried, extinguisher at hand, ears and eyes protected.
        </li>
        <li>
          Abort limits set and tried. Lift at once on a lean mixture, knock, falling rail pressure or a hot
          gearbox.
        </li>
        <li>
          The dyno maker’s instructions, the vehicle maker’s limits and local workplace rules come first.
        </li>
      </ul>
    </Notice>
  );
}
