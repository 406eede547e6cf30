import { readCard } from "@buildproof/workshop";
import type { Metadata } from "next";
import { ButtonLink } from "@/design/button";
import { Moment } from "@/design/moment";
import { Page, SheetHead } from "@/design/sheet";
import { VersionChain } from "@/features/builds/version-chain";
import { cardView } from "@/features/floor/card-view";
import { PaperCard } from "@/features/floor/paper-card";
import { PrintButton } from "@/features/floor/print-button";
import "@/features/floor/floor.css";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Job card on paper" };

/** The whole card for the clipboard: every step with its limits and a box to write in. */
export default async function PaperCardPage({ params }: { readonly params: Promise<{ id: string }> }) {
  const { id } = await params;
  const loaded = await load(readCard, { jobId: id });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const card = cardView(loaded.value);
  return (
    <Page>
      <SheetHead
        title={`Job card ${card.number}: ${card.plate}`}
        lead={`${card.model}${card.packageName ? `, ${card.packageName}` : ""}`}
        actions={
          <>
            <PrintButton />
            <ButtonLink href={`/floor/jobs/${card.jobId}`}>Work on the card</ButtonLink>
            <ButtonLink href={`/jobs/${card.jobId}`}>Back to the job</ButtonLink>
          </>
        }
        facts={[
          { label: "Customer", value: card.customer },
          { label: "VIN", value: card.vin },
          { label: "Odometer", value: `${card.odometerKm.toLocaleString("en-AU")} km` },
          { label: "Status", value: card.statusWords },
          { label: "As of", value: <Moment at={loaded.value.readAt} timeZone={card.timeZone} /> },
        ]}
      />
      <VersionChain sold={{ jobId: card.jobId }} />
      <PaperCard steps={card.steps} />
    </Page>
  );
}
