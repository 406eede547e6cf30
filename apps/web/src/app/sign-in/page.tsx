import type { Metadata } from "next";
import { SignInForm } from "@/features/identity/sign-in-form";
import { wayBack } from "@/features/identity/way-back";
import { DoorPicture } from "@/shell/door-picture";

export const metadata: Metadata = { title: "Sign in" };

interface SignInPageProps {
  readonly searchParams: Promise<{ readonly next?: string | string[] }>;
}

export default async function SignInPage({ searchParams }: SignInPageProps) {
  const { next } = await searchParams;
  return <SignInForm next={wayBack(next)} picture={<DoorPicture />} />;
}
