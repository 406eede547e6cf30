import { listCustomers } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { ButtonLink } from "@/design/button";
import { EmptyState } from "@/design/empty-state";
import { RuledTable } from "@/design/ruled-table";
import { Page, SheetHead } from "@/design/sheet";
import { SearchForm } from "@/features/customers/search-form";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Customers" };

const columns = [
  { id: "name", title: "Name" },
  { id: "contact", title: "Telephone and e-mail" },
  { id: "vehicles", title: "Vehicles" },
  { id: "jobs", title: "Jobs", align: "figure" },
] as const;

export default async function CustomersPage(props: { readonly searchParams: Promise<{ q?: string }> }) {
  const search = ((await props.searchParams).q ?? "").slice(0, 100);
  const loaded = await load(listCustomers, { search });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { customers, hasMore } = loaded.value;
  return (
    <Page>
      <SheetHead
        title="Customers"
        actions={
          <ButtonLink href="/customers/new" variant="primary">
            New customer
          </ButtonLink>
        }
      />
      <SearchForm label="Search customers" search={search} placeholder="Name, telephone, e-mail or plate" />
      <RuledTable
        caption="Customers"
        isCaptionHidden
        columns={columns}
        rows={customers.map((customer) => ({
          id: customer.id,
          cells: {
            name: <Link href={`/customers/${customer.id}`}>{customer.name}</Link>,
            contact: [customer.phone, customer.email].filter((part) => part !== "").join(" · "),
            vehicles: customer.vehicles.map((vehicle, index) => (
              <span key={vehicle.id}>
                {index > 0 && ", "}
                <Link href={`/vehicles/${vehicle.id}`}>{vehicle.plate || "no plate"}</Link> {vehicle.model}
              </span>
            )),
            jobs: customer.jobs,
          },
        }))}
        empty={
          <EmptyState
            sentence={
              search === ""
                ? "There are no customers yet. Add the first."
                : `Nobody is found for “${search}”. Try part of the name, or the plate.`
            }
            action={<ButtonLink href="/customers/new">New customer</ButtonLink>}
          />
        }
      />
      {hasMore && <p className="fine">These are the first 100. Search to find the others.</p>}
    </Page>
  );
}
