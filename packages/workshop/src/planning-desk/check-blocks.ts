import { dateInZone, isoDateOf } from "../core/site-date";
import { dateWords } from "./time-words";
import { overlap, type WorkBlock } from "./work-block";

/** What the blocks are checked against: the vehicle on the hoist, and who must be able to do the work. */
export type BlockLoad = {
  readonly timeZone: string;
  /** Kerb mass and what the build adds; null when the model's mass is not known. */
  readonly vehicleMassKg: number | null;
  /** Skill that a piece of work asks for, by its name on the job card. */
  readonly skillOfWork: ReadonlyMap<string, string>;
};

const personSkill: Readonly<Record<string, string>> = { dyno: "dyno-operator", calibration: "calibrator" };
const skillWords: Readonly<Record<string, string>> = {
  "dyno-operator": "a dyno operator",
  calibrator: "a calibrator",
};

/** Why a block cannot be, whatever anybody says: these points keep people from harm and know no override. */
export function blockPoints(blocks: readonly WorkBlock[], load: BlockLoad): readonly string[] {
  return [
    ...blocks.flatMap((block) => [
      ...inspectionPoints(block, load),
      ...massPoints(block, load),
      ...skillPoints(block, load),
    ]),
    ...clashesAmong(blocks),
  ];
}

function inspectionPoints({ resource, endsAt }: WorkBlock, { timeZone }: BlockLoad): string[] {
  const { inspectedUntil, kind, name } = resource;
  if (kind === "person" || !inspectedUntil) return [];
  if (dateInZone(endsAt, timeZone) <= isoDateOf(inspectedUntil)) return [];
  return [
    `${name}: its inspection runs out on ${dateWords(inspectedUntil)}. Have it inspected by a competent person, or choose another.`,
  ];
}

function massPoints({ resource }: WorkBlock, { vehicleMassKg }: BlockLoad): string[] {
  if (resource.kind !== "hoist" || resource.maxMassKg === null || vehicleMassKg === null) return [];
  if (vehicleMassKg <= resource.maxMassKg) return [];
  return [
    `${resource.name}: the vehicle weighs about ${Math.round(vehicleMassKg)} kg with this build, the hoist is rated for ${resource.maxMassKg} kg. Choose a stronger hoist.`,
  ];
}

function skillPoints({ resource, work }: WorkBlock, { skillOfWork }: BlockLoad): string[] {
  if (resource.kind !== "person") return [];
  if (resource.person && !resource.person.active)
    return [`${resource.name} no longer works here. Choose somebody else.`];
  const asked = personSkill[skillOfWork.get(work) ?? ""];
  if (!asked || resource.person?.skills.includes(asked)) return [];
  return [
    `${resource.name} is not ${skillWords[asked] ?? asked}, which “${work}” needs. Choose somebody who is.`,
  ];
}

function clashesAmong(blocks: readonly WorkBlock[]): string[] {
  return blocks.flatMap((block, index) =>
    blocks
      .slice(index + 1)
      .filter((other) => other.resource.id === block.resource.id && overlap(block, other))
      .map(() => `${block.resource.name} is entered twice for times that overlap. Leave one of them out.`),
  );
}
