import {
  jobStatusWords,
  listModels,
  listOfferedPackages,
  mayDo,
  showVehicle,
  type ValueOf,
  whoAmI,
} from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { Checkbox } from "@/design/checkbox";
import { Disclosure } from "@/design/disclosure";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { SentenceList } from "@/design/sentence-list";
import { Columns, Page, Section, SheetHead, Stack } from "@/design/sheet";
import { StartBuildForm } from "@/features/builds/start-build-form";
import { editVehicleAction } from "@/features/customers/actions";
import { VehicleFields } from "@/features/customers/vehicle-fields";
import { fuelText, kilometres, useWords } from "@/features/customers/vehicle-words";
import { vinSentence } from "@/features/customers/vin-sentence";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Vehicle" };

type Vehicle = ValueOf<typeof showVehicle>;
type Models = ValueOf<typeof listModels>["models"];

export default async function VehiclePage(props: { readonly params: Promise<{ id: string }> }) {
  const { id: vehicleId } = await props.params;
  const loaded = await load(showVehicle, { vehicleId });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const me = await load(whoAmI, {});
  if (!me.ok) return <Refused refusal={me.refusal} />;
  const models = await load(listModels, {});
  if (!models.ok) return <Refused refusal={models.refusal} />;
  const offered = await load(listOfferedPackages, { vehicleId });
  if (!offered.ok) return <Refused refusal={offered.refusal} />;
  const vehicle = loaded.value;
  const mayWrite = mayDo("customers:write", me.value.roles);
  return (
    <Page>
      <SheetHead
        title={[vehicle.plate || "No plate", vehicle.model.name].join(" · ")}
        lead={<Link href={`/customers/${vehicle.customer.id}`}>{vehicle.customer.name}</Link>}
        facts={[
          { label: "VIN", value: vehicle.vin },
          { label: "Engine", value: vehicle.model.engine },
          { label: "Odometer", value: kilometres(vehicle.odometerKm) },
          { label: "Fuel", value: fuelText(vehicle.fuelKind, vehicle.fuelOctane) },
          { label: "Used for", value: usesText(vehicle.uses) },
          ...(vehicle.trailerGtmKg === null
            ? []
            : [{ label: "Heaviest trailer", value: `${vehicle.trailerGtmKg.toLocaleString("en-AU")} kg` }]),
        ]}
      />
      <Columns>
        <Stack>
          {mayWrite && (
            <StartBuildForm
              vehicleId={vehicle.id}
              packages={offered.value.packages}
              currency={offered.value.currency}
            />
          )}
          <History vehicle={vehicle} />
        </Stack>
        <Stack>
          <Section title="What the VIN says">
            <p>{vinSentence(vehicle.vinSays)}</p>
            {vehicle.vinSays.remarks.map((remark) => (
              <p key={remark}>{remark}</p>
            ))}
          </Section>
          <Section title="Already fitted">
            <p>{vehicle.alreadyFitted || "Nothing is recorded."}</p>
          </Section>
          {mayWrite && <EditVehicle vehicle={vehicle} models={models.value.models} />}
        </Stack>
      </Columns>
    </Page>
  );
}

function usesText(uses: readonly string[]): string {
  const words: Readonly<Record<string, string>> = useWords;
  return uses.length === 0 ? "not recorded" : uses.map((use) => words[use] ?? use).join(", ");
}

function EditVehicle({ vehicle, models }: { readonly vehicle: Vehicle; readonly models: Models }) {
  return (
    <Disclosure title="Change the vehicle" level={2}>
      <ActionForm action={editVehicleAction} label="Change the vehicle">
        <input type="hidden" name="vehicleId" value={vehicle.id} />
        <input type="hidden" name="revision" value={vehicle.revision} />
        <VehicleFields
          models={models}
          vehicleId={vehicle.id}
          vehicle={{ ...vehicle, modelCode: vehicle.model.code }}
        />
        <Checkbox
          name="odometerIsRight"
          label="The odometer is right although it reads less than before"
          note="Only when the instrument was changed, or an earlier reading was wrong."
        />
        <SubmitButton pendingLabel="Saving">Save</SubmitButton>
      </ActionForm>
    </Disclosure>
  );
}

function History({ vehicle }: { readonly vehicle: Vehicle }) {
  return (
    <>
      <Section title="Builds">
        <SentenceList
          label="Builds"
          sentences={vehicle.builds.map(({ id, number, goal }) => ({
            id,
            sentence: <Link href={`/builds/${id}`}>Build {number}</Link>,
            note: goal,
          }))}
          empty={<p className="fine">No build yet.</p>}
        />
      </Section>
      <Section title="Jobs">
        <SentenceList
          label="Jobs"
          sentences={vehicle.jobs.map(({ id, number, status }) => ({
            id,
            sentence: <Link href={`/jobs/${id}`}>Job {number}</Link>,
            note: jobStatusWords[status],
          }))}
          empty={<p className="fine">No jobs yet.</p>}
        />
      </Section>
    </>
  );
}
