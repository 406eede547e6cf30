import { whoAmI } from "@buildproof/workshop";
import { redirect } from "next/navigation";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";
import { homeFor } from "@/shell/navigation";

/** Each person starts where their work is. */
export default async function StartPage() {
  const loaded = await load(whoAmI, {});
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  redirect(homeFor(loaded.value.roles));
}
