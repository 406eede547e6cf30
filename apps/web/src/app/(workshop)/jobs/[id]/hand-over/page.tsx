import { readHandOver } from "@buildproof/workshop";
import type { Metadata } from "next";
import { ButtonLink } from "@/design/button";
import { Moment } from "@/design/moment";
import { Money } from "@/design/money";
import { Notice } from "@/design/notice";
import { Columns, Page, Section, SheetHead, SheetRow, Stack } from "@/design/sheet";
import { HandOverForm } from "@/features/paperwork/hand-over-form";
import { ObligationsSection } from "@/features/paperwork/obligations-section";
import { dayText } from "@/features/plan/local-text";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Hand-over" };

export default async function HandOverPage({ params }: { readonly params: Promise<{ id: string }> }) {
  const { id } = await params;
  const loaded = await load(readHandOver, { jobId: id });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const job = loaded.value;
  const { handOver, points, vehicle, money, timeZone, checkIn, may } = job;
  return (
    <Page>
      <SheetHead
        title={`Hand-over of job ${job.number}: ${vehicle.plate}`}
        lead={`${vehicle.model} for ${job.customer.name}`}
        actions={
          <>
            <ButtonLink href={`/jobs/${job.id}`}>Back to the job</ButtonLink>
            {handOver && (
              <ButtonLink href={`/api/jobs/${job.id}/hand-over-pack`}>Hand-over pack (PDF)</ButtonLink>
            )}
          </>
        }
        facts={[
          { label: "Status", value: job.statusWords },
          {
            label: "Outstanding",
            value: <Money minor={money.outstandingMinor} currency={money.currency} />,
          },
          {
            label: "Came in with",
            value: checkIn
              ? `${checkIn.odometerKm.toLocaleString("en-AU")} km, ${checkIn.keys} keys`
              : "not checked in",
          },
        ]}
      />
      <Columns>
        <ObligationsSection
          jobId={job.id}
          obligations={job.obligations}
          holding={job.holding}
          notLaidOut={job.notLaidOut}
          timeZone={timeZone}
          mayAttach={may.attach && !handOver}
        />
        <Stack>
          {handOver ? (
            <Section title="Handed over">
              <div>
                <SheetRow label="When">
                  <Moment at={handOver.at} timeZone={timeZone} />
                </SheetRow>
                <SheetRow label="To">{handOver.receivedBy}</SheetRow>
                <SheetRow label="Odometer">{`${handOver.odometerKm.toLocaleString("en-AU")} km`}</SheetRow>
                <SheetRow label="Keys">{handOver.keys ?? "not counted"}</SheetRow>
                <SheetRow label="Follow-up">
                  {handOver.followUpOn ? dayText(handOver.followUpOn) : "none agreed"}
                </SheetRow>
                {handOver.note && <SheetRow label="Note">{handOver.note}</SheetRow>}
              </div>
            </Section>
          ) : (
            <>
              <Section
                title="What is open"
                aside={<span className="fine">{points.length === 0 ? "nothing" : points.length}</span>}
              >
                {points.length === 0 ? (
                  <p>Nothing holds this vehicle back.</p>
                ) : (
                  <ul className="sentences" aria-label="Open points">
                    {points.map(({ sentence, safety }) => (
                      <li key={sentence} className="sentence" data-weight="blocks">
                        <div>
                          {sentence}
                          {safety && (
                            <span className="sentence-note">
                              <strong>Safety: no way round it.</strong>
                            </span>
                          )}
                        </div>
                      </li>
                    ))}
                  </ul>
                )}
              </Section>
              {may.handOver && (
                <Section title="At the keys">
                  {job.cautions.length > 0 && (
                    <Notice title="Say these to whoever takes the vehicle">
                      <ul>
                        {job.cautions.map((caution) => (
                          <li key={caution}>{caution}</li>
                        ))}
                      </ul>
                    </Notice>
                  )}
                  <HandOverForm
                    jobId={job.id}
                    revision={job.revision}
                    lastOdometerKm={Math.max(checkIn?.odometerKm ?? 0, vehicle.odometerKm)}
                    keysTaken={checkIn?.keys ?? null}
                    customer={job.customer.name}
                    today={job.today}
                    asksFollowUp={job.asksFollowUp}
                  />
                </Section>
              )}
            </>
          )}
        </Stack>
      </Columns>
    </Page>
  );
}
