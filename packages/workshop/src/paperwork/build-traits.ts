import type { BuildTrait } from "@buildproof/compliance";
import type { Transaction } from "@buildproof/database";

/** Items that bring an obligation by being what they are. */
const traitOfItem: Readonly<Record<string, BuildTrait>> = {
  "engineer-certificate": "certificate-promised",
  "retorque-visit": "re-torque-promised",
  "camera-recalibration": "camera-recalibration",
  "tyre-placard": "tyre-placard",
  "brake-controller": "trailer-brakes",
};

type ItemRow = {
  readonly code: string;
  readonly system: string;
  readonly kind: string;
  readonly maker: string;
  readonly serialised: boolean;
};

/** What the accepted items, their operations and the job card say of a build, as far as obligations turn on it. */
export async function buildTraitsOf(
  tx: Transaction,
  job: { readonly id: string; readonly itemCodes: readonly string[] },
): Promise<ReadonlySet<BuildTrait>> {
  const items = await tx.item.findMany({ where: { code: { in: [...job.itemCodes] } } });
  const proofs = await tx.operation.count({
    where: { stage: "proof", code: { in: items.flatMap((item) => item.operations) } },
  });
  const kinds = await tx.jobStep.groupBy({ by: ["kind"], where: { jobId: job.id } });
  const traits = new Set(items.flatMap(traitsOfItem));
  if (proofs > 0) traits.add("power-promised");
  if (kinds.some(({ kind }) => kind === "torque")) traits.add("torque-steps");
  if (kinds.some(({ kind }) => kind === "holdPoint")) traits.add("hold-points");
  return traits;
}

function traitsOfItem(item: ItemRow): BuildTrait[] {
  const traits: BuildTrait[] = [];
  const named = traitOfItem[item.code];
  if (named) traits.push(named);
  // The numbered kit of the air path is its blower.
  if (item.system === "air" && item.kind === "kit" && item.serialised) traits.push("forced-induction");
  if (item.kind === "calibration") traits.push("calibration-changed");
  if (item.system === "exhaust") traits.push("exhaust-changed");
  if (item.system === "wheels-tyres") traits.push("ride-height-or-tyres-changed");
  if (item.serialised && item.maker !== "workshop") traits.push("warranted-parts");
  return traits;
}
