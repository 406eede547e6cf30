import { startBuild } from "../builds/start-build";
import type { Actor } from "../core/actor";
import { newId } from "../core/new-id";
import { hashOfToken, newSecretToken } from "../core/secret-token";
import { acceptVersion } from "../quotes/accept-version";
import { draftFromBuild } from "../quotes/draft-from-build";
import { issueVersion } from "../quotes/issue-version";
import { makeLink } from "../quotes/make-link";
import { showQuote } from "../quotes/show-quote";
import type { demoWorkshop } from "./demo-workshop";

type Trial = ReturnType<typeof demoWorkshop>;

let made = 0;

/** A customer with a Ridgewold of their own, so that the tests of one file do not meet. */
export async function newVehicle(trial: Trial): Promise<string> {
  made += 1;
  const [model] = await trial.sql(
    "select m.id, m.workshop_id from vehicle_model m join workshop w on w.id = m.workshop_id where m.code = 'ridgewold-57' and w.name like 'Saltbush%'",
  );
  const [customerId, vehicleId] = [newId(), newId()];
  await trial.sql(
    "insert into customer (id, workshop_id, name, phone, email) values ($1, $2, $3, '08 5550 0177', '')",
    [customerId, model?.workshop_id, `Quote Customer ${made}`],
  );
  await trial.sql(
    `insert into vehicle (id, workshop_id, customer_id, vehicle_model_id, vin, plate, odometer_km, fuel_kind, fuel_octane, uses)
     values ($1, $2, $3, $4, $5, $6, 24310, 'petrol', 98, '{touring}')`,
    [
      vehicleId,
      model?.workshop_id,
      customerId,
      model?.id,
      `7ZZQT57W1R${String(made).padStart(7, "0")}`,
      `Q${made}`,
    ],
  );
  return vehicleId;
}

/** A build with everything that its package calls for. */
export async function newBuild(trial: Trial, packageCode: string | null = "long-grade-24"): Promise<string> {
  const vehicleId = await newVehicle(trial);
  const goal = "Tow the boat up the range without hunting for gears.";
  const { id } = await trial.done("desk", startBuild, { vehicleId, goal, wantedBy: null, packageCode });
  // On the hot days of the demo's site the package alone is not enough.
  if (packageCode === "long-grade-24")
    await trial.sql(
      `insert into build_item (id, workshop_id, build_id, item_id, position)
       select $1, workshop_id, $2, id, 99 from item where code = 'charge-cooler-hot-kit'
         and workshop_id = (select workshop_id from build where id = $2)`,
      [newId(), id],
    );
  return id;
}

export async function newDraft(trial: Trial, packageCode?: string) {
  const buildId = await newBuild(trial, packageCode);
  const draft = await trial.done("desk", draftFromBuild, { buildId });
  return { buildId, ...draft };
}

export async function newIssued(trial: Trial, packageCode?: string) {
  const draft = await newDraft(trial, packageCode);
  await trial.done("desk", issueVersion, { versionId: draft.versionId, revision: 1 });
  return draft;
}

/** A quote that its customer has accepted, and what it asks of them. */
export async function newAccepted(trial: Trial, packageCode?: string) {
  const issued = await newIssued(trial, packageCode);
  const { versionId } = issued;
  const { customer } = await newLink(trial, versionId);
  const says = { versionId, name: "Q. Customer", agreed: true, statement: "Yes." };
  await trial.done(customer, acceptVersion, says);
  const { money } = await trial.done("desk", showQuote, { quoteId: issued.quoteId });
  if (!money) throw new Error("nothing is due on an accepted quote");
  return { ...issued, ...money };
}

/** Makes a link to a version, and answers its token with whom its holder acts as. */
export async function newLink(trial: Trial, versionId: string) {
  const { token, tokenHash } = newSecretToken();
  const { linkId } = await trial.done("desk", makeLink, { versionId, tokenHash });
  const [row] = await trial.sql("select workshop_id from customer_link where token_hash = $1", [
    hashOfToken(token),
  ]);
  const workshopId = String(row?.workshop_id);
  const customer: Actor = { kind: "customer", workshopId, linkId, versionId };
  return { token, linkId, customer };
}

/** A line of the version that is shown, by its code. */
export async function lineOf(trial: Trial, quoteId: string, code: string) {
  const { shown } = await trial.done("desk", showQuote, { quoteId });
  const line = shown.lines.find((each) => each.code === code);
  if (!line) throw new Error(`the quote has no line ${code}`);
  return { line, revision: shown.revision };
}
