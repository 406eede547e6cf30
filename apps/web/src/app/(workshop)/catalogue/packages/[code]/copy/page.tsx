import { planCopy } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { Notice } from "@/design/notice";
import { Columns, Page, Section, SheetHead } from "@/design/sheet";
import { CopyForm } from "@/features/packages/copy-form";
import { inDraft } from "@/features/packages/in-draft";
import { PackageOnModel } from "@/features/packages/package-on-model";
import { replacementsOf } from "@/features/packages/replacements-of";
import { WritersOnly } from "@/features/packages/writers-only";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Copy a package" };

interface CopyPageProps {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>;
}

export default async function CopyPage({ params, searchParams }: CopyPageProps) {
  const { code } = await params;
  const { draft, to, ...rest } = await searchParams;
  const versionId = typeof draft === "string" && draft !== "" ? draft : null;
  const loaded = await load(planCopy, {
    code,
    versionId,
    modelCode: typeof to === "string" ? to : "",
    replacements: replacementsOf(Object.entries(rest)),
  });
  if (!loaded.ok && loaded.refusal.code === "not-allowed") return <WritersOnly />;
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const plan = loaded.value;
  return (
    <Page>
      <SheetHead
        title={`${plan.name} for the ${plan.model.name}`}
        lead={
          <>
            A copy of <Link href={inDraft(`/catalogue/packages/${code}`, versionId)}>{plan.name}</Link>.{" "}
            {plan.carried} of its items carry over as they are; the texts do, too.
          </>
        }
      />
      <Columns>
        <Section title="What does not carry over">
          {plan.missing.length === 0 && <p>Every item fits the {plan.model.name}.</p>}
          {plan.on.promise.stands === "not-kept" && (
            <Notice title="The promised power does not carry over">
              <p>
                {plan.on.promise.sentence} The copy promises no power; promise one when the forecast supports
                it.
              </p>
            </Notice>
          )}
          <CopyForm code={code} plan={plan} />
        </Section>
        <PackageOnModel on={plan.on} currency={plan.currency} />
      </Columns>
    </Page>
  );
}
