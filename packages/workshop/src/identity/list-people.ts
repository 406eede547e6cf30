import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";

/** Everybody of the workshop, those who may sign in first. */
export const listPeople = query({
  name: "identity.list-people",
  permission: "people:write",
  input: z.strictObject({}),
  async run({ tx, person }) {
    const rows = await tx.person.findMany({ orderBy: [{ active: "desc" }, { name: "asc" }] });
    return ok(
      rows.map(({ id, name, email, roles, skills, active }) => ({
        id,
        name,
        email,
        roles,
        skills,
        active,
        isMe: id === person.id,
      })),
    );
  },
});
