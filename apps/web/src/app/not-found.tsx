import type { Metadata } from "next";
import { NothingHere } from "@/shell/nothing-here";

export const metadata: Metadata = { title: "Not here" };

export default function NotFound() {
  return (
    <main id="content">
      <NothingHere />
    </main>
  );
}
