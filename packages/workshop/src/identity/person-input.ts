import { z } from "zod";
import { roles } from "../core/actor";
import { skills } from "./skills";

/** What a person may do: at least one role, any skills. */
export const duties = {
  roles: z
    .array(z.enum(roles, "Choose among front desk, manager, technician and owner."))
    .min(1, "Tick at least one role.")
    .transform((list) => [...new Set(list)]),
  skills: z
    .array(z.enum(skills, "Choose among the skills of the list."))
    .transform((list) => [...new Set(list)]),
};

export const personName = z
  .string()
  .trim()
  .min(2, "Type the person's name.")
  .max(80, "A name has at most 80 characters.");

export const newPassword = z
  .string()
  .min(12, "A password has at least 12 characters.")
  .max(200, "A password has at most 200 characters.");
