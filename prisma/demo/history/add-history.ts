import { addAcceptance, addBuild, addQuote, type DemoQuote, type WantedVersion } from "../quote-rows";
import type { Scene } from "../scene";
import type { SeededRandom } from "../seeded-random";
import { customerPool, memberRows } from "./customer-pool";
import { type Enquiry, enquiries } from "./enquiry";
import { addHistoryJob } from "./history-job";
import { noThanks } from "./no-thanks";
import { planJobs } from "./planned-job";
import { workingTime } from "./working-time";

const DAY_MS = 86_400_000;
const OPENED_DAYS = 560;
/** The last days before the anchor belong to the living jobs. */
const QUIET_DAYS = 6;
/** A quote of the history that is still open has this long to run at least. */
const OPEN_DAYS = 5;

/** Eighteen months of enquiries, quotes and jobs before the anchor. Invented, from the seed. */
export function addHistory(scene: Scene): void {
  const { workshop } = scene;
  const { local, anchor, random } = workshop;
  const pool = customerPool(random.fork("customers"));
  const asked = enquiries(workshop.withRandom("enquiries"), pool);
  const quiet = new Date(anchor.getTime() - QUIET_DAYS * DAY_MS);
  const time = workingTime(local, new Date(anchor.getTime() - OPENED_DAYS * DAY_MS), quiet);
  const won = asked.filter(({ outcome }) => outcome === "accepted").sort(byDecision);
  const planned = planJobs(workshop.withRandom("plans"), time, won, quiet);

  const vehicleOf = memberRows(scene);
  const says = random.fork("declines");
  const quotes = new Map<Enquiry, DemoQuote>();
  for (const enquiry of asked) {
    if (enquiry.outcome === "accepted" && !planned.has(enquiry)) continue;
    const { want } = enquiry;
    const build = addBuild(workshop, scene.catalogue, {
      vehicle: vehicleOf(enquiry.member, enquiry.askedAt),
      goal: enquiry.goal,
      packageCode: want.packageCode,
      itemCodes: want.items,
      at: enquiry.askedAt,
    });
    quotes.set(enquiry, addQuote(workshop, build, versionsOf(scene, enquiry, says)));
  }
  for (const enquiry of won) {
    const quote = quotes.get(enquiry);
    const plan = planned.get(enquiry);
    if (!quote || !plan) continue;
    addAcceptance(workshop, quote, enquiry.decidedAt);
    addHistoryJob(scene, time, enquiry, plan, quote);
  }
}

const byDecision = (one: Enquiry, other: Enquiry) => one.decidedAt.getTime() - other.decidedAt.getTime();

const sooner = (one: Date, other: Date) => (one < other ? one : other);

function versionsOf(
  { workshop, staff }: Scene,
  enquiry: Enquiry,
  says: SeededRandom,
): [WantedVersion, ...WantedVersion[]] {
  const { local, anchor, site } = workshop;
  const issuedById = staff.person("noor");
  const [first, ...later] = enquiry.issuedAt;
  const last = later.at(-1) ?? first;
  const runsOut = local.dayOf(last).add({ days: site.quoteValidDays });
  const left = local.dayOf(anchor).until(runsOut, { largestUnit: "days" }).days;
  const end =
    left < 0 || enquiry.outcome !== "lapsed" ? enquiry.outcome : left >= OPEN_DAYS ? "issued" : "declined";
  const newest: WantedVersion = {
    status: end,
    at: last,
    issuedById,
    discountPct: enquiry.discountPct,
    ...(end === "declined"
      ? { declined: { at: sooner(enquiry.decidedAt, anchor), because: says.pick(noThanks) } }
      : {}),
  };
  return later.length > 0 ? [{ status: "superseded", at: first, issuedById }, newest] : [newest];
}
