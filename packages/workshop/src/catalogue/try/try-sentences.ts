import { type CurrencyCode, formatMoney, minorUnits } from "@buildproof/units";
import type { OpenBuild } from "./open-builds";
import type { TriedDifference } from "./try-findings";

const kinds: Readonly<Record<OpenBuild["is"], readonly [one: string, many: string]>> = {
  sample: ["sample build", "sample builds"],
  quote: ["open quote", "open quotes"],
  draft: ["build not quoted yet", "builds not quoted yet"],
};

const numbers = ["No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten"];

/** "Two open quotes would gain a finding." One sentence for each kind of build and of difference; empty: nothing. */
export function trySentences(
  differing: readonly (Pick<OpenBuild, "is"> & TriedDifference)[],
  currency: CurrencyCode,
): readonly string[] {
  return (["sample", "quote", "draft"] as const).flatMap((is) => {
    const those = differing.filter((build) => build.is === is);
    const missing = those.filter(({ gains }) => gains.some((line) => line.startsWith("Missing:")));
    const gaining = those.filter((build) => build.gains.length > 0 && !missing.includes(build));
    const losing = those.filter(({ loses }) => loses.length > 0);
    const priced = those.filter(({ beforeMinor, afterMinor }) => beforeMinor !== afterMinor);
    const changes = priced.map(({ beforeMinor, afterMinor }) => afterMinor - beforeMinor);
    return [
      sentence(missing.length, is, "would gain a missing item."),
      sentence(gaining.length, is, "would gain a finding."),
      sentence(losing.length, is, "would lose a finding."),
      priced.length > 0
        ? sentence(priced.length, is, `would cost otherwise today, by ${range(changes, currency)} with tax.`)
        : null,
    ].flatMap((each) => each ?? []);
  });
}

function sentence(count: number, is: OpenBuild["is"], words: string): string | null {
  if (count === 0) return null;
  return `${numbers[count] ?? count} ${kinds[is][count === 1 ? 0 : 1]} ${words}`;
}

function range(changes: readonly number[], currency: CurrencyCode): string {
  const words = (change: number) =>
    `${change > 0 ? "+" : "\u2212"}${formatMoney(minorUnits(Math.abs(change)), currency)}`;
  const [least, most] = [Math.min(...changes), Math.max(...changes)];
  return least === most ? words(least) : `${words(least)} to ${words(most)}`;
}
