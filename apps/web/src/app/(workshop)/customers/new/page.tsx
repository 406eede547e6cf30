import type { Metadata } from "next";
import { ButtonLink } from "@/design/button";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Page, SheetHead } from "@/design/sheet";
import { addCustomerAction } from "@/features/customers/actions";
import { CustomerFields } from "@/features/customers/customer-fields";

export const metadata: Metadata = { title: "New customer" };

export default async function NewCustomerPage(props: { readonly searchParams: Promise<{ name?: string }> }) {
  const { name = "" } = await props.searchParams;
  return (
    <Page narrow>
      <SheetHead title="New customer" />
      <ActionForm action={addCustomerAction} label="New customer">
        <CustomerFields
          autoFocus
          customer={{ name: name.slice(0, 200), phone: "", email: "", address: "", taxNumber: "", notes: "" }}
        />
        <div className="form-actions">
          <SubmitButton pendingLabel="Adding">Add the customer</SubmitButton>
          <ButtonLink href="/customers" variant="plain">
            Back to the customers
          </ButtonLink>
        </div>
      </ActionForm>
    </Page>
  );
}
