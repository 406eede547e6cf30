import type { Transaction } from "@buildproof/database";
import { compareDecimals, exactDecimal } from "@buildproof/units";
import type { DraftLine } from "./draft-line";
import { type QuotableBuild, quotableBuild } from "./quotable-build";
import type { QuoteSite } from "./quote-site";
import { readSelection, sameItems } from "./stored-selection";
import { validUntilRefusal } from "./valid-until";

type Version = {
  readonly validUntil: string;
  readonly selection: unknown;
  readonly rows: readonly Pick<DraftLine, "kind" | "code" | "quantity">[];
};

export type OpenPoints = {
  /** Everything that keeps the draft from being issued, a sentence each. */
  readonly points: readonly string[];
  /** The build was changed after the draft was priced. */
  readonly isBuildChanged: boolean;
};

/** What stands between a draft and the customer. */
export async function openPoints(
  tx: Transaction,
  buildId: string,
  version: Version,
  site: Pick<QuoteSite, "timeZone">,
  now: Date,
): Promise<OpenPoints> {
  const build = await quotableBuild(tx, buildId, now);
  if (!build) throw new Error(`the build ${buildId} of a quote is gone`);
  const isBuildChanged = !sameItems(readSelection(version.selection).items, build.selection.items);
  return {
    isBuildChanged,
    points: [
      ...(version.rows.length === 0 ? ["The quote has no lines. Add what is to be paid for."] : []),
      ...(validUntilRefusal(version.validUntil, now, site.timeZone) === "date-past"
        ? ["Its last day has passed. Choose until when it holds."]
        : []),
      ...(isBuildChanged
        ? ["The build was changed after this draft was priced. Take the build as it is now."]
        : missingItems(version.rows, build)),
      ...build.selection.findings.map(({ sentence }) => sentence),
    ],
  };
}

/** What the build has and nobody would pay for: taken off the quote and left on the build. */
function missingItems(rows: Version["rows"], build: QuotableBuild): readonly string[] {
  return build.lines.flatMap(({ kind, code, description, quantity }) => {
    if (kind !== "item" && kind !== "fee") return [];
    const quoted = rows.find((row) => row.kind === kind && row.code === code);
    if (quoted && compareDecimals(exactDecimal(quoted.quantity), exactDecimal(quantity)) >= 0) return [];
    return [
      `${description} is on the build ${quoted ? "in a larger number than" : "and not on"} the quote. Take it off the build, or take the build as it is now.`,
    ];
  });
}
