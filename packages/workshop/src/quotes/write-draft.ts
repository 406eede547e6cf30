import { newId } from "../core/new-id";
import { storedDate } from "../core/site-date";
import type { Work } from "../core/use-case";
import { priceLines } from "./price-lines";
import type { QuotableBuild } from "./quotable-build";
import type { QuoteSite } from "./quote-site";

type NewDraft = {
  readonly quoteId: string;
  readonly versionNo: number;
  readonly validUntil: string;
};

/** Writes a new draft version from a build, with all of its lines and amounts. Answers its id. */
export async function writeDraft(
  { tx, workshopId, audit }: Pick<Work, "tx" | "workshopId" | "audit">,
  site: QuoteSite,
  build: QuotableBuild,
  { quoteId, versionNo, validUntil }: NewDraft,
): Promise<string> {
  const id = newId();
  const { lines, totals } = priceLines(site, build.lines, {
    discountMinor: 0n,
    nonReturnableMinor: build.nonReturnableMinor,
  });
  await tx.quoteVersion.create({
    data: {
      id,
      workshopId,
      quoteId,
      versionNo,
      status: "draft",
      validUntil: storedDate(validUntil),
      currency: site.currency,
      ...totals,
      ...contentOf(build),
    },
  });
  await tx.quoteLine.createMany({
    data: lines.map((line, position) => ({ id: newId(), workshopId, versionId: id, position, ...line })),
  });
  audit({
    entity: "quote-version",
    entityId: id,
    after: { quoteId, versionNo, buildId: build.id, grossMinor: totals.grossMinor },
  });
  return id;
}

/** What a version says and holds beside its lines, as its columns. */
export function contentOf(build: QuotableBuild) {
  return {
    labourHours: build.labourHours,
    savedHours: build.savedHours,
    dynoHours: build.dynoHours,
    ...(build.promise ? { promise: build.promise } : {}),
    ...(build.forecast ? { forecast: build.forecast } : {}),
    selection: build.selection,
    goal: build.goal,
    inclusions: [...build.inclusions],
    exclusions: [...build.exclusions],
    assumptions: [...build.assumptions],
    cautions: [...build.cautions],
  };
}
