import { findGoalWays, showVehicle } from "@buildproof/workshop";
import type { Metadata } from "next";
import Link from "next/link";
import { Page, SheetHead } from "@/design/sheet";
import { GoalForm } from "@/features/builds/goal-form";
import { goalOfAddress, isAsked } from "@/features/builds/goal-of-address";
import { GoalWays } from "@/features/builds/goal-ways";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";
import { requestContext } from "@/server/request-context";
import "@/features/builds/builds.css";

export const metadata: Metadata = { title: "From a goal to a build" };

interface GoalPageProps {
  readonly searchParams: Promise<Record<string, string | readonly string[] | undefined>>;
}

export default async function GoalPage({ searchParams }: GoalPageProps) {
  // A field that stands twice in the address counts once.
  const typed = Object.fromEntries(
    Object.entries(await searchParams).map(([name, value]) => [
      name,
      typeof value === "string" ? value : value?.[0],
    ]),
  );
  const vehicleId = typed.vehicle ?? "";
  const loaded = await load(showVehicle, { vehicleId });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const vehicle = loaded.value;
  const asked = goalOfAddress(typed);
  const found = isAsked(typed) ? await findGoalWays(await requestContext(), { vehicleId, ...asked }) : null;
  return (
    <Page>
      <SheetHead
        title="From a goal to a build"
        lead={
          <>
            For <Link href={`/vehicles/${vehicleId}`}>{vehicleWords(vehicle)}</Link>: say what is wanted, and
            see what meets it, best first.
          </>
        }
      />
      <GoalForm vehicleId={vehicleId} typed={typed} refusal={found && !found.ok ? found.refusal : null} />
      {found?.ok && <GoalWays answer={found.value} vehicleId={vehicleId} asked={asked} />}
    </Page>
  );
}

function vehicleWords({
  model,
  plate,
}: {
  readonly model: { readonly name: string };
  readonly plate: string;
}) {
  return [model.name, plate].filter((part) => part !== "").join(" · ");
}
