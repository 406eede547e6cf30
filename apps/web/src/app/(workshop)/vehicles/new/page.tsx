import { customersToChoose, listModels } from "@buildproof/workshop";
import type { Metadata } from "next";
import { ButtonLink } from "@/design/button";
import { ComboBox } from "@/design/combo-box";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Page, SheetHead } from "@/design/sheet";
import { addVehicleAction } from "@/features/customers/actions";
import { VehicleFields } from "@/features/customers/vehicle-fields";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "New vehicle" };

interface NewVehicleProps {
  readonly searchParams: Promise<{ customer?: string; vin?: string; plate?: string }>;
}

export default async function NewVehiclePage(props: NewVehicleProps) {
  const { customer, vin = "", plate = "" } = await props.searchParams;
  const people = await load(customersToChoose, {});
  if (!people.ok) return <Refused refusal={people.refusal} />;
  const loaded = await load(listModels, {});
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { customers } = people.value;
  const owner = customers.find(({ id }) => id === customer);
  return (
    <Page narrow>
      <SheetHead title="New vehicle" {...(owner ? { lead: `of ${owner.name}` } : {})} />
      <ActionForm action={addVehicleAction} label="New vehicle">
        {owner ? (
          <input type="hidden" name="customerId" value={owner.id} />
        ) : (
          <div className="form-row">
            <ComboBox
              name="customerId"
              label="Customer"
              options={customers.map(({ id, name, phone }) => ({ id, label: name, note: phone }))}
              placeholder="Type a few letters"
              isRequired
            />
            <div className="self-end">
              <ButtonLink href="/customers/new">New customer</ButtonLink>
            </div>
          </div>
        )}
        <VehicleFields
          models={loaded.value.models}
          vehicle={{
            vin: vin.slice(0, 40),
            modelCode: "",
            plate: plate.slice(0, 12),
            odometerKm: null,
            fuelKind: "petrol",
            fuelOctane: null,
            uses: [],
            trailerGtmKg: null,
            alreadyFitted: "",
          }}
        />
        <div className="form-actions">
          <SubmitButton pendingLabel="Adding">Add the vehicle</SubmitButton>
          <ButtonLink href={owner ? `/customers/${owner.id}` : "/customers"} variant="plain">
            {owner ? `Back to ${owner.name}` : "Back to the customers"}
          </ButtonLink>
        </div>
      </ActionForm>
    </Page>
  );
}
