"use client";

import { Button } from "@/design/button";

/** The page is laid out as a sheet of paper, so the browser's own print is enough. */
export function PrintButton() {
  return <Button onPress={() => window.print()}>Print</Button>;
}
