import type { Transaction } from "@buildproof/database";
import type { ChassisBuild } from "./chassis-build";
import { readStored } from "./part";
import {
  storedDriveline,
  storedItem,
  storedMasses,
  storedModel,
  storedRoad,
  storedTyre,
} from "./stored-chassis";

/** A build as its chassis sees it; null when this workshop has no such build. */
export async function readChassisBuild(tx: Transaction, buildId: string): Promise<ChassisBuild | null> {
  const row = await tx.build.findUnique({
    where: { id: buildId },
    select: {
      vehicle: {
        select: {
          trailerGtmKg: true,
          alreadyFitted: true,
          vehicleModel: { select: { name: true, figures: true } },
        },
      },
      items: {
        orderBy: { position: "asc" },
        select: {
          quantity: true,
          item: { select: { code: true, name: true, massKg: true, figures: true } },
        },
      },
    },
  });
  if (!row) return null;
  const { vehicleModel, trailerGtmKg, alreadyFitted } = row.vehicle;
  const { name, figures } = vehicleModel;
  return {
    model: readStored(storedModel, figures, name),
    driveline: readStored(storedDriveline, groupOf(figures, "driveline"), name),
    tyre: readStored(storedTyre, groupOf(figures, "tyre"), name),
    masses: readStored(storedMasses, groupOf(figures, "masses"), name),
    road: readStored(storedRoad, groupOf(figures, "road"), name),
    items: row.items.map(({ quantity, item }) => ({
      code: item.code,
      name: item.name,
      massKg: quantity * item.massKg,
      chassis: storedItem.parse(item.figures),
    })),
    trailerGtmKg,
    alreadyFitted,
  };
}

function groupOf(figures: unknown, name: string): unknown {
  if (typeof figures !== "object" || figures === null) return undefined;
  return Object.entries(figures).find(([key]) => key === name)?.[1];
}
