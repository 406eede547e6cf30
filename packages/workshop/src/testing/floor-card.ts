import { keepPhoto } from "../files/keep-photo";
import type { CardStep } from "../floor/card-step";
import { readCard } from "../floor/read-card";
import { recordStep } from "../floor/record-step";
import { UploadedFile } from "../paperwork/uploaded-file";
import type { demoWorkshop, Part } from "./demo-workshop";

type Trial = ReturnType<typeof demoWorkshop>;

/** The smallest PNG there is: one grey pixel. */
export const onePixel = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABc3UBGAAAAABJRU5ErkJggg==",
  "base64",
);

/** The card of a job on the demo's floor, as a person of it works on it. */
export function floorCard(trial: Trial, jobId: () => string) {
  const read = () => trial.done("technician", readCard, { jobId: jobId() });

  /** The first step that is asked for; a card without it fails the test. */
  async function stepOf(wanted: (step: CardStep) => boolean): Promise<CardStep> {
    const step = (await read()).steps.find(wanted);
    if (!step) throw new Error("the card has no such step");
    return step;
  }

  const photo = async () =>
    (await trial.done("technician", keepPhoto, { file: new UploadedFile("p.png", onePixel) })).sha256;

  /** Enters a step as it should be. */
  async function enter(step: CardStep, as: Part = "technician") {
    const value = step.target ?? step.low ?? step.high ?? 0;
    const what = {
      tick: {},
      holdPoint: {},
      measurement: { value },
      torque: { value },
      serial: { serial: "SN-1" },
      photo: { photoSha256: step.kind === "photo" ? await photo() : "" },
    }[step.kind];
    return trial.done(as, recordStep, { stepId: step.id, ...what });
  }

  /** Enters everything up to the next hold point and answers that. */
  async function workToHold(as: Part = "technician"): Promise<CardStep> {
    for (const step of (await read()).steps) {
      if (step.state === "done") continue;
      if (step.kind === "holdPoint") return step;
      await enter(step, as);
    }
    throw new Error("the card has no hold point left");
  }

  return { read, stepOf, photo, enter, workToHold };
}

/** The id of the demo's job of a plate. */
export async function jobOfPlate(trial: Trial, plate: string): Promise<string> {
  const [row] = await trial.sql(
    "select j.id from job j join vehicle v on v.id = j.vehicle_id where v.plate = $1",
    [plate],
  );
  if (!row) throw new Error(`the demo has no job for ${plate}`);
  return String(row.id);
}
