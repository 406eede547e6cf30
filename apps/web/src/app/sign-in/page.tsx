import type { Metadata } from "next";
import { DoorPicture } from "@/shell/door-picture";
import { SignInSheet } from "@/shell/sign-in-sheet";
import { signInAction } from "./sign-in-action";

export const metadata: Metadata = { title: "Sign in" };

export default function SignInPage() {
  return <SignInSheet action={signInAction} picture={<DoorPicture />} />;
}
