import { jobStatusWords, mayDo, showCustomer, type ValueOf, whoAmI } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { ButtonLink } from "@/design/button";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Money } from "@/design/money";
import { Notice } from "@/design/notice";
import { SentenceList } from "@/design/sentence-list";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { editCustomerAction } from "@/features/customers/actions";
import { CustomerFields } from "@/features/customers/customer-fields";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Customer" };

export default async function CustomerPage(props: { readonly params: Promise<{ id: string }> }) {
  const { id: customerId } = await props.params;
  const loaded = await load(showCustomer, { customerId });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const me = await load(whoAmI, {});
  const mayWrite = me.ok && mayDo("customers:write", me.value.roles);
  const customer = loaded.value;
  return (
    <Page>
      <SheetHead
        title={customer.name}
        actions={
          mayWrite && (
            <ButtonLink href={`/vehicles/new?customer=${customer.id}`} variant="primary">
              New vehicle
            </ButtonLink>
          )
        }
        facts={[
          { label: "Telephone", value: customer.phone || "none" },
          { label: "E-mail", value: customer.email || "none" },
          { label: "Address", value: customer.address || "not recorded" },
        ]}
      />
      {customer.alike.length > 0 && (
        <Notice title="Perhaps the same person twice">
          <p>
            {customer.alike.map((other, index) => (
              <span key={other.id}>
                {index > 0 && ", "}
                <Link href={`/customers/${other.id}`}>{other.name}</Link>
              </span>
            ))}{" "}
            {customer.alike.length === 1 ? "has" : "have"} the same telephone number or e-mail address.
          </p>
        </Notice>
      )}
      <Columns>
        <Stack>
          <Vehicles customer={customer} />
          <Dealings customer={customer} />
        </Stack>
        {mayWrite ? (
          <Section title="Contact">
            <ActionForm action={editCustomerAction} label="Contact">
              <input type="hidden" name="customerId" value={customer.id} />
              <input type="hidden" name="revision" value={customer.revision} />
              <CustomerFields customer={customer} />
              <SubmitButton pendingLabel="Saving">Save</SubmitButton>
            </ActionForm>
          </Section>
        ) : (
          <Section title="Notes">
            <p>{customer.notes || "There are no notes."}</p>
          </Section>
        )}
      </Columns>
    </Page>
  );
}

type Customer = ValueOf<typeof showCustomer>;

function Vehicles({ customer }: { readonly customer: Customer }) {
  return (
    <Section title="Vehicles">
      <SentenceList
        label="Vehicles"
        sentences={customer.vehicles.map((vehicle) => ({
          id: vehicle.id,
          sentence: (
            <Link href={`/vehicles/${vehicle.id}`}>
              {vehicle.plate || "no plate"}, {vehicle.model}
            </Link>
          ),
          note: `${vehicle.odometerKm.toLocaleString("en-AU")} km · ${vehicle.vin}`,
        }))}
        empty={<p className="fine">No vehicle is recorded yet. Add it by its VIN.</p>}
      />
    </Section>
  );
}

function Dealings({ customer }: { readonly customer: Customer }) {
  return (
    <>
      <Section title="Builds">
        <SentenceList
          label="Builds"
          sentences={customer.builds.map((build) => ({
            id: build.id,
            sentence: <Link href={`/builds/${build.id}`}>Build {build.number}</Link>,
            note: [build.plate, build.goal].filter((part) => part !== "").join(" · "),
          }))}
          empty={<p className="fine">Nothing is being built. Start a build from the vehicle’s page.</p>}
        />
      </Section>
      <Section title="Quotes">
        <SentenceList
          label="Quotes"
          sentences={customer.quotes.map(({ id, number, plate, version }) => ({
            id,
            sentence: <Link href={`/quotes/${id}`}>Quote {number}</Link>,
            note: version ? (
              <>
                {plate} · version {version.versionNo}, {version.status} ·{" "}
                <Money minor={version.grossMinor} currency={version.currency} />
              </>
            ) : (
              plate
            ),
          }))}
          empty={<p className="fine">No quotes yet.</p>}
        />
      </Section>
      <Section title="Jobs">
        <SentenceList
          label="Jobs"
          sentences={customer.jobs.map(({ id, number, plate, status }) => ({
            id,
            sentence: <Link href={`/jobs/${id}`}>Job {number}</Link>,
            note: [plate, jobStatusWords[status]].filter((part) => part !== "").join(" · "),
          }))}
          empty={<p className="fine">No jobs yet.</p>}
        />
      </Section>
    </>
  );
}
