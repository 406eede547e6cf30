import type { Metadata } from "next";
import { Notice } from "@/design/notice";
import { SignInForm } from "@/features/identity/sign-in-form";
import { wayBack } from "@/features/identity/way-back";
import { DoorPicture } from "@/shell/door-picture";

export const metadata: Metadata = { title: "Sign in" };

interface SignInPageProps {
  readonly searchParams: Promise<{ readonly next?: string | string[]; readonly changed?: string | string[] }>;
}

export default async function SignInPage({ searchParams }: SignInPageProps) {
  const { next, changed } = await searchParams;
  return (
    <SignInForm
      next={wayBack(next)}
      picture={<DoorPicture />}
      note={changed === "password" && <Notice title="Your password is changed. Sign in with the new one." />}
    />
  );
}
