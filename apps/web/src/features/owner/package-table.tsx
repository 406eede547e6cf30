import type { OwnerPeriod } from "@buildproof/workshop";
import Link from "next/link";
import { Figure } from "@/design/figure";
import { figureText } from "@/design/figure-text";
import { Money } from "@/design/money";
import { RuledTable } from "@/design/ruled-table";
import { over } from "./period-words";
import { middleHalfText, rateText, shareText } from "./share-text";
import type { ShownMargins } from "./shown-margins";

interface PackageTableProps {
  readonly packages: ShownMargins["packages"];
  readonly currency: string;
  readonly period: OwnerPeriod;
}

/** The packages side by side. */
export function PackageTable({ packages, currency, period }: PackageTableProps) {
  return (
    <RuledTable
      caption="Packages"
      isCaptionHidden
      columns={[
        { id: "name", title: "Package" },
        { id: "jobs", title: "Jobs", align: "figure" },
        { id: "sold", title: "Sold", align: "figure" },
        { id: "quoted", title: "Quoted", align: "figure" },
        { id: "earned", title: "Earned", align: "figure" },
        { id: "median", title: "Median job", align: "figure" },
        { id: "half", title: "Middle half", align: "figure" },
        { id: "back", title: "Came back", align: "figure" },
        { id: "won", title: "Quotes won", align: "figure" },
        { id: "dyno", title: "Dyno a job", align: "figure" },
        { id: "hour", title: "Left per dyno hour", align: "figure" },
      ]}
      rows={packages.map((entry) => ({
        id: entry.code,
        cells: {
          name: (
            <Link href={over(`/owner/packages/${entry.code}`, period)} className="whitespace-nowrap">
              {entry.name}
            </Link>
          ),
          won: `${rateText(entry.winRate)} of ${entry.quotesDecided}`,
          jobs: entry.earnings.jobs,
          ...(entry.earnings.jobs > 0 ? figuresOf(entry, currency) : {}),
        },
      }))}
    />
  );
}

function figuresOf(entry: PackageTableProps["packages"][number], currency: string) {
  const { earnings, spread, cameBack, dynoHours, earnedPerDynoHourMinor } = entry;
  return {
    sold: <Money minor={earnings.sellMinor} currency={currency} />,
    quoted: shareText(earnings.quotedMargin),
    earned: shareText(earnings.actualMargin),
    median: spread ? `${figureText(spread.median, 1)} %` : "–",
    half: middleHalfText(spread),
    back: cameBack === 0 ? "none" : `${cameBack}, ${rateText(cameBack / earnings.jobs)}`,
    dyno: dynoHours > 0 ? <Figure value={dynoHours / earnings.jobs} unit="h" decimals={1} /> : "none",
    hour:
      earnedPerDynoHourMinor === null ? "–" : <Money minor={earnedPerDynoHourMinor} currency={currency} />,
  };
}
