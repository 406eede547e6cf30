import { type ContentOf, listPackages } from "@buildproof/workshop";
import type { Metadata } from "next";
import { Page, Section, SheetHead } from "@/design/sheet";
import { PackageForm } from "@/features/packages/package-form";
import { WritersOnly } from "@/features/packages/writers-only";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "New package" };

const empty: ContentOf<"package"> = {
  name: "",
  outcome: "",
  models: [],
  items: [],
  choices: [],
  options: [],
  promise: null,
  assumptions: [],
  exclusions: [],
  cautions: [],
  position: 0,
};

interface NewPackagePageProps {
  readonly searchParams: Promise<{ readonly draft?: string }>;
}

export default async function NewPackagePage({ searchParams }: NewPackagePageProps) {
  const loaded = await load(listPackages, { versionId: (await searchParams).draft ?? null });
  if (!loaded.ok && loaded.refusal.code === "not-allowed") return <WritersOnly />;
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { draft, items, models } = loaded.value;
  return (
    <Page>
      <SheetHead title="New package" lead="It is sold once the draft it stands in is published." />
      <Section title="What it is">
        <PackageForm code={null} content={empty} draft={draft} items={items} models={models} />
      </Section>
    </Page>
  );
}
