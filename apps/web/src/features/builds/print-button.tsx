"use client";

import { Button } from "@/design/button";

/** Opens the device's own print dialog. */
export function PrintButton() {
  return (
    <Button variant="primary" onPress={() => window.print()}>
      Print this sheet
    </Button>
  );
}
