"use client";

import { Button } from "@/design/button";

export function PrintButton() {
  return (
    <Button variant="primary" onPress={() => window.print()}>
      Print
    </Button>
  );
}
