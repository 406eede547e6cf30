import { listApiTokens, showSite, whoAmI } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "@/design/empty-state";
import { Moment } from "@/design/moment";
import { RuledTable } from "@/design/ruled-table";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { SiteForm } from "@/features/settings/site-form";
import { MakeToken, RevokeToken } from "@/features/settings/token-panel";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Settings" };

export default async function SettingsPage() {
  const loaded = await load(listApiTokens, {});
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const me = await load(whoAmI, {});
  if (!me.ok) return <Refused refusal={me.refusal} />;
  const site = await load(showSite, {});
  if (!site.ok) return <Refused refusal={site.refusal} />;
  const { timeZone } = me.value;
  return (
    <Page>
      <SheetHead
        title="Settings"
        lead={
          <>
            Where the site lies, and the tokens with which a program uses the calculations and nothing else.{" "}
            <Link href="/people">People</Link> have accounts instead.
          </>
        }
      />
      <Columns>
        <Section title="Tokens">
          <RuledTable
            caption="Tokens of the workshop"
            isCaptionHidden
            columns={[
              { id: "name", title: "Program" },
              { id: "made", title: "Made" },
              { id: "used", title: "Last used" },
              { id: "state", title: "State" },
            ]}
            rows={loaded.value.map((token) => ({
              id: token.id,
              cells: {
                name: token.name,
                made: <Moment at={token.createdAt} timeZone={timeZone} form="day" />,
                used: token.lastUsedAt ? <Moment at={token.lastUsedAt} timeZone={timeZone} /> : "never",
                state: token.revokedAt ? "revoked" : <RevokeToken tokenId={token.id} name={token.name} />,
              },
            }))}
            empty={<EmptyState sentence="No program has a token yet. Name one and make its token." />}
          />
        </Section>
        <Stack>
          <Section title={site.value.name} aside="where forecasts are told for">
            <SiteForm key={JSON.stringify(site.value)} site={site.value} />
          </Section>
          <Section title="Make a token">
            <MakeToken />
          </Section>
        </Stack>
      </Columns>
    </Page>
  );
}
