"use client";

import { useTransition } from "react";
import { Button } from "@/design/button";
import { signOutEverywhereAction } from "./actions";

export function SignOutEverywhere() {
  const [isPending, start] = useTransition();
  return (
    <Button variant="quiet" isPending={isPending} onPress={() => start(() => signOutEverywhereAction())}>
      Sign out everywhere
    </Button>
  );
}
