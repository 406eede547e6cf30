"use client";

import { Button } from "@/design/button";
import { en } from "@/messages/en";

/** Prints the page as it stands, every line open. */
export function PrintButton() {
  return <Button onPress={() => window.print()}>{en.letter.print}</Button>;
}
