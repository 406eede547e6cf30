import { openDatabase } from "@buildproof/database";
import { addCatalogue } from "./catalogue-rows";
import { type DemoPerson, demoPassword, demoPeople, gulfPeople } from "./demo-people";
import { gulfBoost, saltbush } from "./demo-sites";
import { type DemoSite, type DemoWorkshop, demoWorkshop } from "./demo-workshop";
import { addGulfQuote } from "./gulf-rows";
import { addHistory } from "./history/add-history";
import { addLiveJobs } from "./live/add-live-jobs";
import { type MadeFiles, madeFiles } from "./made-files";
import { demoPasswordHash } from "./password-hash";
import { addRecord } from "./record-rows";
import { type Scene, sceneWithRandom } from "./scene";
import { seededRandom } from "./seeded-random";
import { addWorkshop } from "./workshop-rows";
import { writeRows } from "./write-rows";

export { demoPassword, demoPeople } from "./demo-people";

export type DemoOptions = {
  /** The owner's address: it sees every workshop, and the tables must be there and empty. */
  readonly ownerUrl: string;
  /** The moment the demo is about: its "today". */
  readonly anchor: Date;
  readonly seed?: number;
  /** Eighteen months of earlier jobs. */
  readonly history?: boolean;
  readonly passwordHash?: (password: string) => Promise<string>;
  /** Where the files behind the rows go; without it the rows are written and the files are not. */
  readonly filesFolder?: string;
};

/** Longest time the one transaction may take, on a slow machine. */
const TIMEOUT_MS = 120_000;

/** Fills an empty database with the invented workshops: all of it, or nothing. The same seed and anchor give the same rows. */
export async function loadDemo(options: DemoOptions): Promise<void> {
  const { workshops, files } = await fill(options);
  // Files first: one that no row names is harmless, a row whose file is missing is not.
  if (options.filesFolder) await files.write(options.filesFolder);
  const database = openDatabase({ appUrl: options.ownerUrl, max: 1 });
  try {
    const [first] = workshops;
    if (!first) return;
    await database.inWorkshop(
      first.id,
      async (transaction) => {
        for (const workshop of workshops) await writeRows(transaction, workshop.rows);
        // The planner should not wait for the server's own housekeeping to learn how much there is.
        await transaction.$executeRawUnsafe("analyze");
      },
      { timeoutMs: TIMEOUT_MS },
    );
  } finally {
    await database.close();
  }
}

type Filled = { readonly workshops: readonly DemoWorkshop[]; readonly files: MadeFiles };

async function fill(options: DemoOptions): Promise<Filled> {
  const random = seededRandom(`buildproof demo ${options.seed ?? 1}`);
  const files = madeFiles();
  // One hash serves everybody, since they all share the one printed password.
  const hash = await (options.passwordHash?.(demoPassword) ??
    demoPasswordHash(demoPassword, random.fork("password")));
  const open = (site: DemoSite, people: readonly DemoPerson[], label: string): Scene => {
    const workshop = demoWorkshop(site, options.anchor, random.fork(label));
    const staff = addWorkshop(workshop, people, hash);
    return { workshop, staff, catalogue: addCatalogue(workshop), files };
  };

  const main = open(saltbush, demoPeople, "saltbush");
  if (options.history) addHistory(sceneWithRandom(main, "history"));
  addLiveJobs(sceneWithRandom(main, "live"));
  const second = open(gulfBoost, gulfPeople, "gulf");
  addGulfQuote(second);
  const workshops = [main.workshop, second.workshop];
  for (const workshop of workshops) {
    addRecord(workshop);
    addCounters(workshop);
  }
  return { workshops, files };
}

/** The next number that a screen will give. */
function addCounters(workshop: DemoWorkshop): void {
  for (const [series, next] of Object.entries(workshop.counters())) {
    workshop.rows.add("counter", {
      id: workshop.newId(workshop.anchor),
      workshopId: workshop.id,
      series,
      next,
    });
  }
}
