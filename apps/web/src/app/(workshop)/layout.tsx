import { whoAmI } from "@buildproof/workshop";
import { cookies } from "next/headers";
import type { ReactNode } from "react";
import { signOutAction } from "@/features/identity/actions";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";
import { THEME_COOKIE, themeFrom } from "@/shell/theme";
import { WorkshopShell } from "@/shell/workshop-shell";

/** Everything a signed-in person sees stands in the shell. */
export default async function WorkshopLayout({ children }: { readonly children: ReactNode }) {
  const loaded = await load(whoAmI, {});
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const { workshopName, name, roles } = loaded.value;
  const theme = themeFrom((await cookies()).get(THEME_COOKIE)?.value);
  return (
    <WorkshopShell
      workshopName={workshopName}
      person={{ name, roles }}
      theme={theme}
      onSignOut={signOutAction}
    >
      {children}
    </WorkshopShell>
  );
}
