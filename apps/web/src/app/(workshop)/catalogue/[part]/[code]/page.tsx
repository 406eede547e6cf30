import { listVersions, mayDo, partKinds, showPart, whoAmI } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { Moment } from "@/design/moment";
import { Columns, Page, Section, SheetHead, SheetRow, Stack } from "@/design/sheet";
import { onePart, partTitles, versionName } from "@/features/catalogue/catalogue-words";
import { changeKind, DifferenceList } from "@/features/catalogue/difference-list";
import { DraftChooser } from "@/features/catalogue/draft-chooser";
import { ItemDocuments } from "@/features/catalogue/item-documents";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Catalogue" };

interface PartPageProps {
  readonly params: Promise<{ readonly part: string; readonly code: string }>;
}

export default async function PartPage({ params }: PartPageProps) {
  const asked = await params;
  const part = partKinds.find((known) => known === asked.part);
  if (!part) notFound();
  const loaded = await load(showPart, { part, code: asked.code });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const me = await load(whoAmI, {});
  if (!me.ok) return <Refused refusal={me.refusal} />;
  const shown = loaded.value;
  const mayWrite = mayDo("catalogue:write", me.value.roles);
  return (
    <Page>
      <SheetHead
        title={part === "rule" ? "Rule" : shown.name}
        lead={
          <>
            <Link href={`/catalogue?part=${part}`}>{partTitles[part]}</Link> of the catalogue
            {!shown.stands && ": not sold any more, or not published yet"}
          </>
        }
        facts={[{ label: "Code", value: shown.code }]}
      />
      <Columns>
        <Section title="As it stands">
          {shown.said.length === 0 && <p>It is only drafted yet: nothing is sold of it.</p>}
          <div>
            {shown.said.map(({ label, words }) => (
              <SheetRow key={label} label={label}>
                {words}
              </SheetRow>
            ))}
          </div>
        </Section>
        <Stack>
          {mayWrite && part !== "package" && (
            <Section title="Change it">
              <DraftChooser
                drafts={await openDrafts()}
                part={part}
                code={shown.code}
                title={`Change of ${part === "rule" ? "a rule" : shown.name}`.slice(0, 120)}
                button="Change in the draft"
              />
            </Section>
          )}
          {part === "item" && (
            <ItemDocuments
              code={shown.code}
              documents={shown.documents}
              mayWrite={mayWrite && shown.stands}
            />
          )}
        </Stack>
      </Columns>
      <Section title="What became of it">
        {shown.history.length === 0 && <p>No version has changed this {onePart[part]} yet.</p>}
        {shown.history.map((change) => (
          <article key={change.versionId} className="grid gap-2">
            <h3>
              <Link href={`/catalogue/versions/${change.versionId}`}>{versionName(change)}</Link>{" "}
              <span className="font-normal text-ink-soft">
                {changeKind(change.kind)} by {change.by},{" "}
                {change.on ? (
                  `holds from ${change.on}`
                ) : (
                  <Moment at={change.at} timeZone={me.value.timeZone} form="day" />
                )}
              </span>
            </h3>
            <DifferenceList
              caption={`What ${versionName(change)} changes`}
              differences={change.differences}
            />
          </article>
        ))}
      </Section>
    </Page>
  );
}

async function openDrafts() {
  const loaded = await load(listVersions, {});
  return loaded.ok ? loaded.value.versions.filter(({ state }) => state !== "published") : [];
}
