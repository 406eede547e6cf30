import type { Transaction } from "@buildproof/database";
import type { Found } from "./found";
import { likeLiteral, type Typed } from "./what-is-typed";

export const MOST_HITS = 8;
/** The share of letter groups that must agree: one wrong or missing letter in a surname. */
const SLIP_FORGIVEN = 0.5;
/** Fewer digits than this are found in every telephone number. */
const FEWEST_PHONE_DIGITS = 4;

/** By name (a slip of the pen forgiven), telephone or e-mail; names that begin with it first. */
export async function findCustomers(tx: Transaction, typed: Typed): Promise<readonly Found[]> {
  const digits = typed.digits.length >= FEWEST_PHONE_DIGITS ? typed.digits : "";
  const rows = await tx.$queryRaw<{ id: string; name: string; phone: string; email: string }[]>`
    select id, name, phone, email from customer
    where lower(name) like ${typed.pattern}
      or (length(${typed.lower}) >= 4 and word_similarity(${typed.lower}, lower(name)) >= ${SLIP_FORGIVEN})
      or lower(email) like ${typed.pattern}
      or (${digits} <> '' and regexp_replace(phone, '\\D', '', 'g') like '%' || ${digits} || '%')
    order by lower(name) like ${`${likeLiteral(typed.lower)}%`} desc, word_similarity(${typed.lower}, lower(name)) desc, name
    limit ${MOST_HITS}`;
  return rows.map(({ id, name, phone, email }) => ({
    id,
    title: name,
    detail: [phone, email].filter((part) => part !== "").join(" · "),
  }));
}

/** By plate, VIN, model or owner. */
export async function findVehicles(tx: Transaction, typed: Typed): Promise<readonly Found[]> {
  const compact = `%${likeLiteral(typed.compact)}%`;
  const rows = await tx.$queryRaw<{ id: string; plate: string; vin: string; model: string; owner: string }[]>`
    select v.id, v.plate, v.vin, m.name as model, c.name as owner
    from vehicle v
    join vehicle_model m on m.id = v.vehicle_model_id
    join customer c on c.id = v.customer_id
    where (${typed.compact} <> '' and replace(upper(v.plate), ' ', '') like ${compact})
      or (length(${typed.compact}) >= 4 and upper(v.vin) like ${compact})
      or lower(c.name) like ${typed.pattern}
    order by replace(upper(v.plate), ' ', '') = ${typed.compact} desc, v.vin = ${typed.compact} desc, c.name, v.plate
    limit ${MOST_HITS}`;
  return rows.map(({ id, plate, vin, model, owner }) => ({
    id,
    title: `${plate || "no plate"} · ${model}`,
    detail: `${owner} · ${vin}`,
  }));
}

/** Parts and operations of the catalogue, by name or maker. */
export async function findItems(tx: Transaction, typed: Typed): Promise<readonly Found[]> {
  const rows = await tx.$queryRaw<{ id: string; name: string; maker: string }[]>`
    select id, name, maker from item
    where lower(name) like ${typed.pattern} or lower(maker) like ${typed.pattern} or lower(note) like ${typed.pattern}
    order by lower(name) like ${`${likeLiteral(typed.lower)}%`} desc, position
    limit ${MOST_HITS}`;
  return rows.map(({ id, name, maker }) => ({ id, title: name, detail: maker }));
}
