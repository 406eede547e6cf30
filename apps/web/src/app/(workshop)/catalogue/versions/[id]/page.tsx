import { mayDo, showVersion, tryVersion, whoAmI } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { Suspense } from "react";
import { EmptyState } from "@/design/empty-state";
import { Moment } from "@/design/moment";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { versionName } from "@/features/catalogue/catalogue-words";
import { ChangeSections } from "@/features/catalogue/change-sections";
import { ProofSection } from "@/features/catalogue/proof-section";
import { TrySection } from "@/features/catalogue/try-section";
import { DraftHeadActions, PublishForms } from "@/features/catalogue/version-actions";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Version of the catalogue" };

export default async function VersionPage({ params }: { readonly params: Promise<{ readonly id: string }> }) {
  const { id } = await params;
  const loaded = await load(showVersion, { versionId: id });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const me = await load(whoAmI, {});
  if (!me.ok) return <Refused refusal={me.refusal} />;
  const version = loaded.value;
  const mayWrite = mayDo("catalogue:write", me.value.roles);
  const isOpen = mayWrite && version.state !== "published";
  return (
    <Page>
      <SheetHead
        title={versionName(version)}
        lead={
          <>
            <Link href="/catalogue/versions">Versions</Link> of the <Link href="/catalogue">catalogue</Link>
          </>
        }
        actions={isOpen && <DraftHeadActions version={version} title={version.title} />}
        facts={[
          { label: "Written by", value: version.by },
          { label: "Begun", value: <Moment at={version.at} timeZone={version.timeZone} form="day" /> },
          { label: "Stands", value: <Standing version={version} /> },
        ]}
      />
      <Columns>
        <Section title="What it changes">
          {version.changes.length === 0 && (
            <EmptyState
              sentence="Nothing yet. Open a part of the catalogue and change it in this draft, or add one there."
              action={<Link href="/catalogue">To the catalogue</Link>}
            />
          )}
          <ChangeSections version={version} changes={version.changes} isOpen={isOpen} />
        </Section>
        {version.state !== "published" && (
          <Stack>
            <Section title="Tried before it is published">
              <Suspense fallback={<p>Trying it on open quotes and builds …</p>}>
                <Tried versionId={id} mayWrite={mayWrite} />
              </Suspense>
            </Section>
            {isOpen && version.changes.length > 0 && (
              <Section title="Publish">
                <PublishForms version={version} tomorrow={version.tomorrow} publishOn={version.publishOn} />
              </Section>
            )}
          </Stack>
        )}
      </Columns>
      {isOpen && version.changes.length > 0 && (
        <Section title="Proven before it is published">
          <ProofSection versionId={id} stamp={String(version.revision)} />
        </Section>
      )}
    </Page>
  );
}

interface StandingProps {
  readonly version: {
    readonly state: "draft" | "scheduled" | "published";
    readonly publishOn: string | null;
    readonly publishedBy: string | null;
    readonly publishedAt: Date | null;
    readonly timeZone: string;
  };
}

function Standing({ version: { state, publishOn, publishedBy, publishedAt, timeZone } }: StandingProps) {
  if (state === "draft") return "draft: nothing is sold from it";
  if (state === "scheduled") return `holds from ${publishOn}, set by ${publishedBy}`;
  return (
    <>
      published by {publishedBy}
      {publishedAt && (
        <>
          , <Moment at={publishedAt} timeZone={timeZone} />
        </>
      )}
    </>
  );
}

async function Tried({ versionId, mayWrite }: { readonly versionId: string; readonly mayWrite: boolean }) {
  const loaded = await load(tryVersion, { versionId });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  return <TrySection {...loaded.value} mayWrite={mayWrite} />;
}
