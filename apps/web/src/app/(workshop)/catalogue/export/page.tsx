import { mayDo, type PartKind, partKinds, whoAmI } from "@buildproof/workshop";
import type { Metadata } from "next";
import { ButtonLink } from "@/design/button";
import { Notice } from "@/design/notice";
import { RuledTable } from "@/design/ruled-table";
import { Page, Section, SheetHead } from "@/design/sheet";
import { partWords } from "@/features/catalogue-exchange/part-words";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Catalogue as files" };

const holds: Readonly<Record<PartKind, string>> = {
  item: "prices, costs, figures, what they fit and the work they bring",
  group: "of which items a build has one at most, exactly one, or at least one",
  rule: "what needs what, what excludes what, what a link of the chain can bear",
  package: "items, choices, options, the promised outcome and the texts",
  operation: "hours, place, skill and the access work they share",
  access: "hours, and the access work beneath it",
};

export default async function ExportPage() {
  const me = await load(whoAmI, {});
  if (!me.ok) return <Refused refusal={me.refusal} />;
  if (!mayDo("catalogue:write", me.value.roles))
    return (
      <Page>
        <SheetHead title="Catalogue as files" />
        <Notice title="For manager and owner">
          <p>The files hold what parts cost. Ask the owner or a manager for the one you need.</p>
        </Notice>
      </Page>
    );
  return (
    <Page>
      <SheetHead
        title="Catalogue as files"
        lead="As it stands now. What is taken out here is read back in as it was."
        actions={<ButtonLink href="/catalogue/import">Import</ButtonLink>}
      />
      <Section title="All of it">
        <p>One JSON document, for another programme or to keep.</p>
        <div className="form-actions">
          <ButtonLink href="/api/catalogue/export">The whole catalogue (JSON)</ButtonLink>
        </div>
      </Section>
      <Section title="Part by part, for a spreadsheet">
        <RuledTable
          caption="Tables of the catalogue"
          isCaptionHidden
          columns={[
            { id: "part", title: "Table" },
            { id: "holds", title: "What it holds" },
            { id: "file", title: "File" },
          ]}
          rows={partKinds.map((part) => ({
            id: part,
            cells: {
              part: partWords[part],
              holds: holds[part],
              file: <a href={`/api/catalogue/export?part=${part}`}>{partWords[part]} (CSV)</a>,
            },
          }))}
        />
      </Section>
    </Page>
  );
}
