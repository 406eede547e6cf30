import { listVersions, mayDo, whoAmI } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "@/design/empty-state";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Moment } from "@/design/moment";
import { RuledTable } from "@/design/ruled-table";
import { Columns, Page, Section, SheetHead } from "@/design/sheet";
import { goBackAction } from "@/features/catalogue/actions";
import { versionName } from "@/features/catalogue/catalogue-words";
import { DraftChooser } from "@/features/catalogue/draft-chooser";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Versions of the catalogue" };

export default async function VersionsPage() {
  const loaded = await load(listVersions, {});
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const me = await load(whoAmI, {});
  if (!me.ok) return <Refused refusal={me.refusal} />;
  const { versions } = loaded.value;
  const { timeZone } = me.value;
  const mayWrite = mayDo("catalogue:write", me.value.roles);
  return (
    <Page>
      <SheetHead
        title="Versions of the catalogue"
        lead={
          <>
            Drafts gather changes; published together they become what is sold. Back to the{" "}
            <Link href="/catalogue">catalogue</Link>.
          </>
        }
      />
      <Columns>
        <Section title="Drafts, what waits for its day, and what was published">
          <RuledTable
            caption="Versions"
            isCaptionHidden
            columns={[
              { id: "name", title: "Version" },
              { id: "changes", title: "Changes", align: "figure" },
              { id: "by", title: "By" },
              { id: "when", title: "When" },
              { id: "back", title: "Go back" },
            ]}
            rows={versions.map((version) => ({
              id: version.id,
              cells: {
                name: <Link href={`/catalogue/versions/${version.id}`}>{versionName(version)}</Link>,
                changes: version.changes,
                by: version.by,
                when:
                  version.publishOn && version.state === "scheduled" ? (
                    `from ${version.publishOn}`
                  ) : (
                    <Moment at={version.at} timeZone={timeZone} form="day" />
                  ),
                back: mayWrite && version.number !== null && !version.isNewest && (
                  <GoBack number={version.number} label={`Go back to version ${version.number}`} />
                ),
              },
            }))}
            empty={<EmptyState sentence="There is no version yet: the catalogue is as it was set up." />}
          />
          {mayWrite && versions.some(({ number }) => number !== null) && (
            <GoBack number={0} label="Go back to how it began" />
          )}
        </Section>
        {mayWrite && (
          <Section title="Start a draft">
            <DraftChooser drafts={[]} part="item" code="" title="" button="Start the draft" />
          </Section>
        )}
      </Columns>
    </Page>
  );
}

function GoBack({ number, label }: { readonly number: number; readonly label: string }) {
  return (
    <ActionForm action={goBackAction} label={label}>
      <input type="hidden" name="number" value={number} readOnly />
      <SubmitButton variant="plain" pendingLabel="Opening the draft">
        {label}
      </SubmitButton>
    </ActionForm>
  );
}
