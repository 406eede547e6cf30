import { showDyno } from "@buildproof/workshop";
import type { Metadata } from "next";
import { Columns, Page, SheetHead, Stack } from "@/design/sheet";
import { BookingsOfDay, RecentSessions, Waiting } from "@/features/dyno/dyno-day";
import "@/features/dyno/dyno.css";
import { momentText } from "@/design/moment-text";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Dyno" };

export default async function DynoPage() {
  const loaded = await load(showDyno, {});
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const day = loaded.value;
  return (
    <Page>
      <SheetHead title="Dyno" lead={momentText(day.now, day.timeZone, "day")} />
      <Columns>
        <Stack>
          <BookingsOfDay day={day} />
          <Waiting day={day} />
        </Stack>
        <RecentSessions day={day} />
      </Columns>
    </Page>
  );
}
