import { z } from "zod";

/** What the owner of the vehicle wants, in their words. */
export const goal = z
  .string()
  .trim()
  .min(3, "Write in a few words what the owner wants.")
  .max(500, "Keep the goal to 500 characters; details belong to the vehicle's notes.");

/** A date without a time (ISO 8601), or null when nobody waits for it. */
export const wantedBy = z.iso.date("Enter the date as year-month-day, or leave it empty.").nullable();

export const itemCode = z.string().min(1, "Choose an item.").max(80);

/** What was picked among the choices and options of a package. */
export const picked = z.array(itemCode).max(100, "A package offers fewer than 100 items.").default([]);

export const quantity = z
  .number("Enter the quantity as a whole number.")
  .int("Enter the quantity as a whole number.")
  .min(1, "A quantity is at least 1. To leave the item out, remove it.")
  .max(99, "A quantity is at most 99.");
