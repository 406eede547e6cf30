import { moneyText } from "@/design/money-text";
import type { ShownMargins } from "./shown-margins";

/** Which package makes the most of the dyno, the scarcest hour of the workshop. */
export function DynoSentence({ packages, currency }: Pick<ShownMargins, "packages" | "currency">) {
  const ranked = packages
    .flatMap(({ name, earnedPerDynoHourMinor, dynoHours, earnings }) =>
      // Where most jobs take no dyno at all, what they leave says nothing of an hour on it.
      earnedPerDynoHourMinor !== null && dynoHours / earnings.jobs >= 1
        ? [{ name, minor: earnedPerDynoHourMinor }]
        : [],
    )
    .toSorted((one, other) => other.minor - one.minor);
  const [best, ...others] = ranked;
  if (!best || others.length === 0) return null;
  const rest = others.map(({ name, minor }) => `${moneyText(minor, currency)} in ${name}`).join(", ");
  return (
    <p>
      An hour of the dyno leaves most in {best.name}: {moneyText(best.minor, currency)}, against {rest}.
    </p>
  );
}
