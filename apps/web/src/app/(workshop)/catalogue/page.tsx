import { listCatalogue, listVersions, mayDo, partKinds, whoAmI } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { ButtonLink } from "@/design/button";
import { Page, Section, SheetHead } from "@/design/sheet";
import { type Asked, CatalogueFilter } from "@/features/catalogue/catalogue-filter";
import { CatalogueList } from "@/features/catalogue/catalogue-list";
import { newPart, onePart, partTitles } from "@/features/catalogue/catalogue-words";
import { DraftChooser } from "@/features/catalogue/draft-chooser";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Catalogue" };

type Query = Readonly<Record<string, string | undefined>>;

export default async function CataloguePage({ searchParams }: { readonly searchParams: Promise<Query> }) {
  const asked = askedOf(await searchParams);
  const loaded = await load(listCatalogue, asked);
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const me = await load(whoAmI, {});
  if (!me.ok) return <Refused refusal={me.refusal} />;
  const list = loaded.value;
  const mayWrite = mayDo("catalogue:write", me.value.roles);
  return (
    <Page>
      <SheetHead
        title="Catalogue"
        lead="What is sold, how it is fitted, and what goes with what. It changes by published versions only."
        actions={
          <>
            {mayWrite && (
              <>
                <ButtonLink href="/catalogue/proof">What it allows</ButtonLink>
                <ButtonLink href="/catalogue/import">Import</ButtonLink>
                <ButtonLink href="/catalogue/export">Export</ButtonLink>
              </>
            )}
            <ButtonLink href="/catalogue/versions">Versions and drafts</ButtonLink>
          </>
        }
      />
      <CatalogueFilter asked={asked} {...list} />
      <Section title={partTitles[asked.part]}>
        <CatalogueList {...list} part={asked.part} />
      </Section>
      {mayWrite && asked.part !== "package" && <AddPart part={asked.part} />}
    </Page>
  );
}

async function AddPart({ part }: Pick<Asked, "part">) {
  const drafts = await openDrafts();
  return (
    <Section
      title={`Add ${part === "item" || part === "operation" || part === "access" ? "an" : "a"} ${onePart[part]}`}
    >
      <div className="max-w-xl">
        <DraftChooser
          drafts={drafts}
          part={part}
          code={newPart}
          title={`New ${onePart[part]}`}
          button={`Add to the draft`}
        />
      </div>
      <p className="text-ink-soft">
        Nothing is sold from a draft until it is published.{" "}
        <Link href="/catalogue/versions">All versions</Link>
      </p>
    </Section>
  );
}

async function openDrafts() {
  const loaded = await load(listVersions, {});
  if (!loaded.ok) return [];
  return loaded.value.versions.filter(({ state }) => state !== "published");
}

function askedOf(query: Query): Asked {
  const text = (name: string) => query[name]?.trim().slice(0, 100) ?? "";
  return {
    part: partKinds.find((part) => part === query.part) ?? "item",
    search: text("q"),
    system: text("system"),
    component: text("component"),
    kind: text("kind"),
    model: text("model"),
  };
}
