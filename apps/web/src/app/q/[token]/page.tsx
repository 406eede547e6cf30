import { perform, readLetter } from "@buildproof/workshop";
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Letter } from "@/features/quotes/letter";
import { letterContext } from "@/features/quotes/letter-context";

export const metadata: Metadata = { title: "Your quote", referrer: "no-referrer" };

interface LetterPageProps {
  readonly params: Promise<{ readonly token: string }>;
}

/** The customer's page: opened by the link alone, without an account. */
export default async function LetterPage({ params }: LetterPageProps) {
  const { token } = await params;
  const context = await letterContext(token);
  if (!context) notFound();
  const result = await perform(context, readLetter, {});
  if (!result.ok) notFound();
  return <Letter letter={result.value} token={token} />;
}
