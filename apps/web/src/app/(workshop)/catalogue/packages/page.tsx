import { listPackages } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { ButtonLink } from "@/design/button";
import { EmptyState } from "@/design/empty-state";
import { RuledTable } from "@/design/ruled-table";
import { Page, SheetHead } from "@/design/sheet";
import { inDraft } from "@/features/packages/in-draft";
import { promiseText } from "@/features/packages/promise-text";
import { WritersOnly } from "@/features/packages/writers-only";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Packages" };

interface PackagesPageProps {
  readonly searchParams: Promise<{ readonly draft?: string }>;
}

export default async function PackagesPage({ searchParams }: PackagesPageProps) {
  const versionId = (await searchParams).draft ?? null;
  const loaded = await load(listPackages, { versionId });
  if (!loaded.ok && loaded.refusal.code === "not-allowed") return <WritersOnly />;
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { packages, draft } = loaded.value;
  return (
    <Page>
      <SheetHead
        title="Packages"
        lead={
          draft ? (
            <>
              As the draft <Link href={`/catalogue/versions/${draft.id}`}>{draft.title}</Link> would have
              them.
            </>
          ) : (
            "As they are sold now."
          )
        }
        actions={<ButtonLink href={inDraft("/catalogue/packages/new", versionId)}>New package</ButtonLink>}
      />
      <RuledTable
        caption="Packages"
        isCaptionHidden
        columns={[
          { id: "name", title: "Package" },
          { id: "models", title: "For" },
          { id: "items", title: "Items", align: "figure" },
          { id: "leaves", title: "Leaves to the owner" },
          { id: "promise", title: "Promises" },
        ]}
        rows={packages.map((each) => ({
          id: each.code,
          cells: {
            name: <Link href={inDraft(`/catalogue/packages/${each.code}`, versionId)}>{each.name}</Link>,
            models: each.models.length === 0 ? "every vehicle" : each.models.join(", "),
            items: each.items,
            leaves: leavesText(each.choices, each.options),
            promise: promiseText(each.promise),
          },
        }))}
        empty={
          <EmptyState sentence="There is no package yet. Make the first one from items of the catalogue." />
        }
      />
    </Page>
  );
}

function leavesText(choices: number, options: number): string {
  const parts = [
    ...(choices > 0 ? [`${choices} ${choices === 1 ? "choice" : "choices"}`] : []),
    ...(options > 0 ? [`${options} ${options === 1 ? "option" : "options"}`] : []),
  ];
  return parts.length === 0 ? "nothing" : parts.join(", ");
}
