import { readCard } from "@buildproof/workshop";
import type { Metadata } from "next";
import { ButtonLink } from "@/design/button";
import { Notice } from "@/design/notice";
import { Page, SheetHead } from "@/design/sheet";
import { cardView } from "@/features/floor/card-view";
import { JobCard } from "@/features/floor/job-card";
import "@/features/floor/floor.css";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Job card" };

interface CardPageProps {
  readonly params: Promise<{ id: string }>;
  readonly searchParams: Promise<{ step?: string }>;
}

export default async function CardPage({ params, searchParams }: CardPageProps) {
  const { id } = await params;
  const { step } = await searchParams;
  const loaded = await load(readCard, { jobId: id });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const card = cardView(loaded.value);
  return (
    <div data-density="floor">
      <Page narrow>
        <SheetHead
          title={`${card.plate}, job ${card.number}`}
          lead={`${card.model}${card.packageName ? `, ${card.packageName}` : ""}. Stands: ${card.stands}; ${card.statusWords}.`}
          actions={<ButtonLink href={`/jobs/${card.jobId}/card`}>Print</ButtonLink>}
        />
        {card.status === "booked" && (
          <Notice title="This vehicle is not checked in yet.">
            <p>
              <ButtonLink variant="primary" href={`/floor/jobs/${card.jobId}/check-in`}>
                Check in
              </ButtonLink>
            </p>
          </Notice>
        )}
        <JobCard card={card} {...(step === undefined ? {} : { openAt: step })} />
      </Page>
    </div>
  );
}
