import { showPackage } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { ButtonLink } from "@/design/button";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { CopyTo } from "@/features/packages/copy-to";
import { inDraft } from "@/features/packages/in-draft";
import { PackageForm } from "@/features/packages/package-form";
import { PackageOnModel } from "@/features/packages/package-on-model";
import { promiseText } from "@/features/packages/promise-text";
import { WritersOnly } from "@/features/packages/writers-only";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Package" };

interface PackagePageProps {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<{ readonly draft?: string }>;
}

export default async function PackagePage({ params, searchParams }: PackagePageProps) {
  const { code } = await params;
  const versionId = (await searchParams).draft ?? null;
  const loaded = await load(showPackage, { code, versionId });
  if (!loaded.ok && loaded.refusal.code === "not-allowed") return <WritersOnly />;
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { content, draft, vehicles, items, models, currency } = loaded.value;
  const others = models.filter((model) => !vehicles.some(({ modelCode }) => modelCode === model.code));
  return (
    <Page>
      <SheetHead
        title={content.name}
        lead={content.outcome}
        actions={<ButtonLink href={inDraft("/catalogue/packages", versionId)}>All packages</ButtonLink>}
        facts={[
          {
            label: "Seen",
            value: draft ? (
              <Link href={`/catalogue/versions/${draft.id}`}>draft: {draft.title}</Link>
            ) : (
              "as it is sold"
            ),
          },
          { label: "Promises", value: promiseText(content.promise) },
          { label: "Always in it", value: `${content.items.length} items` },
        ]}
      />
      <Columns>
        <Stack>
          {vehicles.map((on) => (
            <PackageOnModel key={on.modelCode} on={on} currency={currency} />
          ))}
          {others.length > 0 && (
            <Section title="Copy to another vehicle">
              <CopyTo code={code} versionId={versionId} models={others} />
            </Section>
          )}
        </Stack>
        <Section title="Change it">
          <PackageForm
            key={draft ? `${draft.id} ${draft.revision}` : "sold"}
            code={code}
            content={content}
            draft={draft}
            items={items}
            models={models}
          />
        </Section>
      </Columns>
    </Page>
  );
}
