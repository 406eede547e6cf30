import { refusals } from "../core/result";

export const refuse = refusals({
  "job-not-found": () => "There is no such job here. Open it again from your day.",
  "step-not-found": () => "There is no such step on this card. Open the card again.",
  "person-not-found": () => "There is no such person in this workshop. Choose another from the list.",
  "fault-not-found": () => "There is no such fault here. Open the card again.",
  "day-of-another": () => "Only a manager looks at another person's day. Open your own.",

  "not-in-the-building": (d: { status: string }) =>
    `This job is ${d.status}, so nothing is entered on its card. Check the vehicle in first, or open the right job.`,
  held: (d: { hold: string }) =>
    `Stop: “${d.hold}” is not signed yet. A second person signs it before this step is done.`,
  "already-entered": (d: { by: string; what: string }) =>
    `${d.by} has already entered this step (${d.what}). Undo that first if it is not right.`,
  "nothing-to-undo": () => "This step is open already. There is nothing to undo.",
  "reopen-reason": () => "Say why, in a few words: others have built on this step or on its signature.",

  "value-missing": () => "Enter the figure that you read, in digits, such as 24.5.",
  "outside-limits": (d: { read: string; limits: string }) =>
    `${d.read} is outside ${d.limits}, so the step is not done. Do it again and enter the new figure; if it stays, write below what you found, and it goes to the desk as a fault.`,
  "serial-missing": () => "Type the serial number as it stands on the part.",
  "photo-missing": () => "Take a photo first: this step is its photo.",
  "photo-not-kept": () => "The photo has not arrived at the workshop. Take it again.",
  "hold-needs-second-person": () =>
    "This is a hold point: a second person signs it with their own e-mail and password.",

  "not-a-hold-point": () => "This step is not a hold point. Open the card again.",
  "sign-in-failed": () =>
    "That e-mail and password do not match, or there were too many tries. Check both, or wait fifteen minutes and try again.",
  "signer-without-skill": (d: { name: string }) =>
    `${d.name} may not sign hold points. Ask somebody with the second-signatory skill.`,
  "signer-did-the-work": (d: { name: string; step: string }) =>
    `${d.name} did some of the work that this signature is for (“${d.step}”). Somebody else must look and sign.`,
  "hold-not-ready": (d: { points: readonly string[] }) =>
    `Not signed: ${d.points.length === 1 ? "one step" : `${d.points.length} steps`} before this hold point must be settled first.`,
  "signatory-missing": () =>
    "This hold point is for the licensed signatory. Type the name of who looked, as it stands on the licence.",

  "not-an-image": () =>
    "This file is not a photo that the workshop takes. Take a photo, or choose a JPEG, PNG, WebP or HEIC file.",
  "photo-too-large": () => "This photo is larger than 15 MB. Take it again at a smaller size.",

  "already-clocked": (d: { number: number; since: string }) =>
    `Your clock is running on job ${d.number} since ${d.since}. Switch it to this job, or stop it first.`,
  "clock-not-running": () => "Your clock is not running. Start it on the job that you are working on.",
  "clock-entry-not-found": () =>
    "There is no such clock entry in this workshop. Open the day or the job again and correct from there.",
  "clock-not-yours": () =>
    "Your own clock is set right on the day that it stopped. Ask a manager to correct this one.",
  "clock-reason": () => "Say in at least 10 characters why the time is corrected; it stays with the entry.",
  "clock-not-a-time": () =>
    "Enter day and time when the work ended, on the workshop's clock; an hour that the change of clocks leaves out or shows twice cannot be used.",
  "clock-in-future": () => "The work cannot have ended in the future. Enter a time up to now.",
  "clock-before-start": (d: { started: string }) => `This work began ${d.started}. Enter a time after that.`,
  "clock-overlaps": (d: { number: number; from: string }) =>
    `The next clock of the same person runs on job ${d.number} from ${d.from}. Enter a time up to then.`,

  "fault-cleared": () => "This fault is settled already. Open the card again.",
  "clear-needs-manager": () => "A fault is settled by a manager. Ask one to look at it.",

  "already-checked-in": (d: { status: string }) =>
    `This vehicle is ${d.status}: it was checked in before. Open its job card.`,
  "not-booked": (d: { status: string }) =>
    `This job is ${d.status}, so its vehicle is not taken in yet. Have a manager book it first.`,
  "not-told": (d: { points: readonly string[] }) =>
    d.points.length === 1
      ? "One thing has not been said to the customer yet. Say it, tick it, then take the vehicle in."
      : `${d.points.length} things have not been said to the customer yet. Say them, tick them, then take the vehicle in.`,
  "odometer-below-known": (d: { known: string }) =>
    `The last reading was ${d.known} km, and this one is lower. Read it again; if it is right, have the desk correct the vehicle first.`,
  "fuel-grade-missing": () =>
    "Ask what grade of fuel is in the tank and choose it: the calibration depends on it.",
  "ethanol-missing": () =>
    "Draw a fuel sample and enter its ethanol content in per cent: this job runs the engine at full load on it.",
});
