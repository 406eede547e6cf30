import { changePassword, signOutEverywhere, whoAmI } from "../identity/own-account";
import { countGoodsIn } from "../jobs/count-goods-in";
import { jobGate } from "../jobs/gate";
import { listJobs } from "../jobs/list-jobs";
import { readJob } from "../jobs/read-job";
import { stopJob } from "../jobs/stop-job";
import { attachEvidence } from "../paperwork/attach-evidence";
import { finishWork } from "../paperwork/finish-work";
import { handOver } from "../paperwork/hand-over";
import { layOutPaperwork } from "../paperwork/lay-out";
import { readFile } from "../paperwork/read-file";
import { readHandOver } from "../paperwork/read-hand-over";
import { bookJob } from "../planning-desk/book";
import { cancelBooking, moveBooking } from "../planning-desk/change-booking";
import { readPlan } from "../planning-desk/read-plan";
import type { UseCase } from "./use-case";

/**
 * Every use case there is, for the test that holds each against every role and against none.
 * A use case that is not listed here fails that test's count.
 */
export const allUseCases = [
  whoAmI,
  signOutEverywhere,
  changePassword,
  countGoodsIn,
  jobGate,
  listJobs,
  readJob,
  stopJob,
  attachEvidence,
  finishWork,
  handOver,
  layOutPaperwork,
  readFile,
  readHandOver,
  bookJob,
  cancelBooking,
  moveBooking,
  readPlan,
] as unknown as readonly UseCase[]; // Each takes its own input; the table only asks names and permissions.
