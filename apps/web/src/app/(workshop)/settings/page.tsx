import { listApiTokens, whoAmI } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "@/design/empty-state";
import { Moment } from "@/design/moment";
import { RuledTable } from "@/design/ruled-table";
import { Columns, Page, Section, SheetHead } from "@/design/sheet";
import { MakeToken, RevokeToken } from "@/features/settings/token-panel";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Settings" };

export default async function SettingsPage() {
  const loaded = await load(listApiTokens, {});
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const me = await load(whoAmI, {});
  if (!me.ok) return <Refused refusal={me.refusal} />;
  const { timeZone } = me.value;
  return (
    <Page>
      <SheetHead
        title="Settings"
        lead={
          <>
            A token lets a program use the calculations, and nothing else of the workshop.{" "}
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
        <Section title="Make a token">
          <MakeToken />
        </Section>
      </Columns>
    </Page>
  );
}
