import type { Scene } from "../scene";
import { addEnquiries } from "./enquiries";
import { addJobsDone } from "./jobs-done";
import { addJobsInWork } from "./jobs-in-work";
import { addJobsWaiting } from "./jobs-waiting";
import { liveDay } from "./live-day";

/**
 * What the workshop has on its hands on the anchor's day, so that no screen is empty. From the day after
 * tomorrow every dyno cell, hoist and person is free.
 */
export function addLiveJobs(scene: Scene): void {
  const day = liveDay(scene);
  addJobsDone(day);
  addJobsInWork(day);
  addJobsWaiting(day);
  addEnquiries(day);
}
