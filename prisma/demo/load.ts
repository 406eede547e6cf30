import { openDatabase } from "@buildproof/database";
import { addCatalogue } from "./catalogue-rows";
import { demoPassword, demoPeople, gulfPeople } from "./demo-people";
import { gulfBoost, saltbush } from "./demo-sites";
import { type DemoWorkshop, demoWorkshop } from "./demo-workshop";
import { demoPasswordHash } from "./password-hash";
import { seededRandom } from "./seeded-random";
import { addWorkshop } from "./workshop-rows";
import { writeRows } from "./write-rows";

export { demoPassword, demoPeople, gulfPeople } from "./demo-people";

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
  const filled = await fill(options);
  const database = openDatabase({ appUrl: options.ownerUrl, max: 1 });
  try {
    const [first] = filled;
    if (!first) return;
    await database.inWorkshop(
      first.id,
      async (transaction) => {
        for (const workshop of filled) await writeRows(transaction, workshop.rows);
      },
      { timeoutMs: TIMEOUT_MS },
    );
  } finally {
    await database.close();
  }
}

async function fill(options: DemoOptions): Promise<readonly DemoWorkshop[]> {
  const random = seededRandom(`buildproof demo ${options.seed ?? 1}`);
  const main = demoWorkshop(saltbush, options.anchor, random.fork("saltbush"));
  const hashing = random.fork("passwords");
  const hash = () => options.passwordHash?.(demoPassword) ?? demoPasswordHash(demoPassword, hashing);
  const staff = await addWorkshop(main, demoPeople, hash);
  const rows = addCatalogue(main);
  void staff;
  void rows;

  const second = demoWorkshop(gulfBoost, options.anchor, random.fork("gulf"));
  await addWorkshop(second, gulfPeople, hash);
  addCatalogue(second);
  for (const workshop of [main, second]) addCounters(workshop);
  return [main, second];
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
