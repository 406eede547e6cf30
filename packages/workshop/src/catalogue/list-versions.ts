import { z } from "zod";
import { ok } from "../core/result";
import { isoDateOf } from "../core/site-date";
import { query } from "../core/use-case";

const LONGEST_LIST = 100;

/** Drafts first, then what takes effect on a day to come, then what was published, the newest first. */
export const listVersions = query({
  name: "catalogue.list-versions",
  permission: "catalogue:read",
  input: z.strictObject({}),
  async run({ tx }) {
    const rows = await tx.catalogueVersion.findMany({
      include: { createdBy: true, publishedBy: true, _count: { select: { changes: true } } },
      orderBy: [{ state: "asc" }, { number: "desc" }, { createdAt: "desc" }],
      take: LONGEST_LIST,
    });
    const newest = Math.max(0, ...rows.map(({ number }) => number ?? 0));
    return ok({
      versions: rows.map((row) => ({
        id: row.id,
        number: row.number,
        isNewest: row.number === newest,
        title: row.title,
        state: row.state,
        publishOn: row.publishOn ? isoDateOf(row.publishOn) : null,
        changes: row._count.changes,
        by: (row.publishedBy ?? row.createdBy).name,
        at: row.publishedAt ?? row.createdAt,
      })),
    });
  },
});
