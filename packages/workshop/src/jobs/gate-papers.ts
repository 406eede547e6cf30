import { formatMoney, isCurrencyCode, minorUnits } from "@buildproof/units";
import { momentWords } from "../planning-desk/time-words";
import type { QuoteMoney } from "../quotes/quote-money";
import type { GateJob } from "./gate-job";
import { type GatePoint, gatePoint } from "./gate-point";

/** The version the job was opened on is the one that the customer accepted, and still stands. */
export function acceptancePoint(job: GateJob, timeZone: string): GatePoint {
  const { version, quote } = job;
  const name = `Quote ${quote.number} version ${version.versionNo}`;
  const head = { point: "acceptance", title: "Acceptance of the current version", place: "quote" as const };
  if (version.status === "accepted" && version.acceptance) {
    const { name: by, at } = version.acceptance;
    return gatePoint({
      ...head,
      met: true,
      sentence: `${name} was accepted by ${by} on ${momentWords(at, timeZone)}.`,
    });
  }
  return gatePoint({
    ...head,
    met: false,
    sentence: `${name} is ${version.status}: the customer has not accepted what the quote says now.`,
    resolve: "Front desk: issue the current version and have the customer accept it.",
  });
}

export function depositPoint(money: QuoteMoney): GatePoint {
  const received = moneyWords(money.receivedMinor, money.currency);
  const due = moneyWords(money.depositMinor, money.currency);
  return gatePoint({
    point: "deposit",
    title: "Deposit",
    place: "quote",
    met: money.depositMet,
    sentence: money.depositMet
      ? `Deposit received: ${received} of ${due}.`
      : `Deposit not received: ${received} of ${due}.`,
    resolve: "Front desk: record the deposit on the quote when it has arrived.",
  });
}

export function goodsPoint(job: GateJob, timeZone: string, kitLines: number): GatePoint {
  const head = { point: "goods-in", title: "Parts counted in the building", place: "job" as const };
  const resolve = "Stores: open what has come and count it against the kit list on the job's page.";
  const count = job.goodsIn[0];
  if (kitLines === 0)
    return gatePoint({ ...head, met: true, sentence: "Nothing that was accepted needs parts." });
  if (!count) return gatePoint({ ...head, met: false, resolve, sentence: "The parts are not counted yet." });
  const at = momentWords(count.countedAt, timeZone);
  if (count.complete)
    return gatePoint({ ...head, met: true, sentence: `Opened and counted complete, ${at}.` });
  return gatePoint({
    ...head,
    met: false,
    resolve,
    sentence: `Counted ${at}; missing: ${count.missing.replace(/\.+$/, "")}.`,
  });
}

/** The compliance path is known when the obligations that the rules ask for stand on the job. */
export function compliancePoint(job: GateJob, asked: readonly { readonly code: string }[]): GatePoint {
  const head = { point: "compliance", title: "Compliance path", place: "hand-over" as const };
  const laidOut = job.obligations.length;
  if (asked.length === 0 || laidOut > 0) {
    const sentence =
      laidOut === 0
        ? "Nothing that was accepted brings an obligation."
        : `${laidOut} obligations are laid out.`;
    return gatePoint({ ...head, met: true, sentence });
  }
  return gatePoint({
    ...head,
    met: false,
    sentence: `${asked.length} obligations of this build are not laid out yet.`,
    resolve: "Front desk: lay out the obligations on the job's hand-over page.",
  });
}

/** Time is found when hoist and technician, and the dyno where the quote has dyno hours, are booked. */
export function resourcesPoint(job: GateJob, now: Date, timeZone: string): GatePoint {
  const booked = new Set(job.bookings.map(({ resource }) => resource.kind));
  const wanted = job.version.dynoHours.greaterThan(0)
    ? (["hoist", "person", "dyno"] as const)
    : (["hoist", "person"] as const);
  const words = { hoist: "hoist", person: "technician", dyno: "dyno" } as const;
  const missing = wanted.filter((kind) => !booked.has(kind)).map((kind) => words[kind]);
  const head = { point: "resources", title: "Resources and time", place: "job" as const };
  const first = job.bookings[0];
  if (missing.length === 0 && first) {
    const started = first.startsAt < now ? "since" : "from";
    return gatePoint({
      ...head,
      met: true,
      sentence: `Booked ${started} ${momentWords(first.startsAt, timeZone)}.`,
    });
  }
  return gatePoint({
    ...head,
    met: false,
    sentence: `Not booked yet: ${missing.join(", ")}.`,
    resolve: "Manager: book the time on this page or on the plan.",
  });
}

export function moneyWords(minor: bigint, currency: string): string {
  return isCurrencyCode(currency)
    ? formatMoney(minorUnits(minor), currency)
    : `${minor} ${currency} (minor units)`;
}
