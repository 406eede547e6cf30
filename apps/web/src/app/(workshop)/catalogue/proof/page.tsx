import { listVersions } from "@buildproof/workshop";
import type { Metadata } from "next";
import { ButtonLink } from "@/design/button";
import { Page, SheetHead } from "@/design/sheet";
import { ProofSection } from "@/features/catalogue/proof-section";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Proof of the catalogue" };

interface ProofPageProps {
  readonly searchParams: Promise<{ readonly version?: string | string[] }>;
}

/** What the catalogue that is sold from allows, or what a draft would. */
export default async function ProofPage({ searchParams }: ProofPageProps) {
  const { version } = await searchParams;
  const loaded = await load(listVersions, {});
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const drafts = loaded.value.versions.filter(({ state }) => state !== "published");
  const draft = drafts.find(({ id }) => id === version);
  return (
    <Page>
      <SheetHead
        title="What the catalogue allows"
        lead={
          draft
            ? `As the draft “${draft.title}” would make it: every build, every vehicle.`
            : "As it is sold from now: every build, every vehicle."
        }
        actions={
          <>
            {draft && <ButtonLink href="/catalogue/proof">As it is sold now</ButtonLink>}
            {drafts
              .filter(({ id, changes }) => id !== draft?.id && changes > 0)
              .map(({ id, title }) => (
                <ButtonLink key={id} href={`/catalogue/proof?version=${id}`}>{`Draft: ${title}`}</ButtonLink>
              ))}
          </>
        }
      />
      <ProofSection versionId={draft?.id ?? null} />
    </Page>
  );
}
