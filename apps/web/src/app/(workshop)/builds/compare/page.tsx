import { compareBuilds } from "@buildproof/workshop";
import type { Metadata } from "next";
import { CompareSides } from "@/features/builds/compare-sides";
import { load } from "@/server/load";
import { Refused } from "@/server/refused";

export const metadata: Metadata = { title: "Compare two builds" };

interface ComparePageProps {
  readonly searchParams: Promise<{ left?: string; right?: string }>;
}

export default async function ComparePage({ searchParams }: ComparePageProps) {
  const { left: leftId = "", right: rightId = "" } = await searchParams;
  const loaded = await load(compareBuilds, { leftId, rightId });
  if (!loaded.ok) return <Refused refusal={loaded.refusal} />;
  return <CompareSides compared={loaded.value} />;
}
