import type { Context } from "../core/context";
import { newId } from "../core/new-id";
import { perform } from "../core/perform";
import { publishVersion } from "./publish-version";

type Service = Pick<Context, "database" | "files" | "now">;

/**
 * Publishes every version whose day has come, in every workshop, each in the name of whoever set the day and only
 * if they may still do so. What is refused (overtaken, or its author gone) stays as it is; Today tells the owner.
 */
export async function publishDue({ database, files, now }: Service): Promise<{ readonly published: number }> {
  let published = 0;
  for (const due of await dueVersions(database, now())) {
    const { workshopId, personId, sessionCounter, versionId, revision } = due;
    const result = await perform(
      {
        database,
        files,
        now,
        actor: { kind: "person", workshopId, personId, sessionCounter },
        requestId: newId(),
        address: "",
      },
      publishVersion,
      { versionId, revision },
    );
    if (result.ok) published += 1;
  }
  return { published };
}

type Due = {
  readonly workshop_id: string;
  readonly version_id: string;
  readonly revision: number;
  readonly person_id: string;
  readonly session_counter: number;
};

/** Across all workshops, each by the calendar of its site. */
async function dueVersions(database: Context["database"], now: Date) {
  const rows = await database.asOutsider(
    (tx) => tx.$queryRaw<Due[]>`select * from due_catalogue_versions(${now}::timestamptz)`,
  );
  return rows.map((row) => ({
    workshopId: row.workshop_id,
    versionId: row.version_id,
    revision: row.revision,
    personId: row.person_id,
    sessionCounter: row.session_counter,
  }));
}
