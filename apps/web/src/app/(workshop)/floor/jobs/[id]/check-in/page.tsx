import { readCheckIn } from "@buildproof/workshop";
import type { Metadata } from "next";
import { Density } from "@/design/density";
import { Notice } from "@/design/notice";
import { Page, SheetHead } from "@/design/sheet";
import { CheckInForm } from "@/features/floor/check-in-form";
import { CheckInRecord } from "@/features/floor/check-in-record";
import "@/features/floor/floor.css";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Check-in" };

export default async function CheckInPage({ params }: { readonly params: Promise<{ id: string }> }) {
  const { id } = await params;
  const loaded = await load(readCheckIn, { jobId: id });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const job = loaded.value;
  return (
    <Density of="floor">
      <Page narrow>
        <SheetHead
          title={`Check in ${job.plate}`}
          lead={`Job ${job.number}, ${job.statusWords}`}
          facts={[
            { label: "Vehicle", value: job.model },
            { label: "VIN", value: job.vin },
            { label: "Customer", value: job.customer },
            { label: "Last reading", value: `${job.knownOdometerKm.toLocaleString("en-AU")} km` },
          ]}
        />
        {job.inspection && <Notice title={job.inspection} kind="blocks" />}
        {job.done ? (
          <CheckInRecord jobId={job.jobId} timeZone={job.timeZone} record={job.done} />
        ) : job.status === "booked" ? (
          <CheckInForm job={job} />
        ) : (
          <Notice title={`This job is ${job.statusWords}, so its vehicle is not taken in now.`}>
            <p>A vehicle is checked in once its job is booked. Ask the manager to book it.</p>
          </Notice>
        )}
      </Page>
    </Density>
  );
}
