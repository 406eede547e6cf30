import { mayDo, showSheet, whoAmI } from "@buildproof/workshop";
import type { Metadata } from "next";
import { BuildSheet } from "@/features/builds/build-sheet";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";
import "@/features/builds/builds.css";
import "@/features/chassis/chassis.css";

export const metadata: Metadata = { title: "Build sheet" };

export default async function BuildPage(props: { readonly params: Promise<{ id: string }> }) {
  const { id: buildId } = await props.params;
  const loaded = await load(showSheet, { buildId });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  const me = await load(whoAmI, {});
  if (!me.ok) return <Refused refusal={me.refusal} />;
  const { quote, siblings, ...sheet } = loaded.value;
  const { roles } = me.value;
  return (
    <BuildSheet
      sheet={sheet}
      quote={quote}
      siblings={siblings}
      mayWrite={mayDo("builds:write", roles)}
      mayInspect={mayDo("inspection:record", roles)}
      mayAssume={mayDo("engineering:assume", roles)}
    />
  );
}
