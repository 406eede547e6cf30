import { LARGEST_IMPORT_BYTES, mayDo, whoAmI } from "@buildproof/workshop";
import type { Metadata } from "next";
import { ButtonLink } from "@/design/button";
import { Notice } from "@/design/notice";
import { Page, SheetHead } from "@/design/sheet";
import { ImportForm } from "@/features/catalogue-exchange/import-form";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Import into the catalogue" };

export default async function ImportPage() {
  const me = await load(whoAmI, {});
  if (!me.ok) return <Refused refusal={me.refusal} />;
  return (
    <Page>
      <SheetHead
        title="Import into the catalogue"
        lead="The files are checked first and nothing is changed. What you then make of them is a draft, tried and published as any other."
        actions={<ButtonLink href="/catalogue/export">Export</ButtonLink>}
      />
      {mayDo("catalogue:write", me.value.roles) ? (
        <ImportForm limitBytes={LARGEST_IMPORT_BYTES} />
      ) : (
        <Notice title="For manager and owner">
          <p>Ask the owner or a manager to import the file.</p>
        </Notice>
      )}
    </Page>
  );
}
