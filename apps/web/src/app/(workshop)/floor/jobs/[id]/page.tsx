import { readCard } from "@buildproof/workshop";
import type { Metadata } from "next";
import { Density } from "@/design/density";
import { Page } from "@/design/sheet";
import { VersionChain } from "@/features/builds/version-chain";
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
    <Density of="floor">
      <Page>
        <JobCard card={card} {...(step === undefined ? {} : { openAt: step })} />
        <div className="card">
          <VersionChain sold={{ jobId: card.jobId }} />
        </div>
      </Page>
    </Density>
  );
}
